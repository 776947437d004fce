import { ringBackHot } from "../../ringHot.ts";

export const topRingBackClearanceHot = ringBackHot("top", "0.872 mm");
