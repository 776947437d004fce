import { ringBackHot } from "../../ringHot.ts";

export const oilRingBackClearanceHot = ringBackHot("oil", "0.872 mm");
