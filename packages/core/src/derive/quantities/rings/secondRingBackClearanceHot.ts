import { ringBackHot } from "../../ringHot.ts";

export const secondRingBackClearanceHot = ringBackHot("second", "0.872 mm");
