import { ringSideHot } from "../../ringHot.ts";

export const secondRingSideClearanceHot = ringSideHot("second", "0.0326 mm");
