import { ringSideHot } from "../../ringHot.ts";

export const topRingSideClearanceHot = ringSideHot("top", "0.0326 mm");
