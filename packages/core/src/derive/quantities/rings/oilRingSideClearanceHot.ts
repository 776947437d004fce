import { ringSideHot } from "../../ringHot.ts";

export const oilRingSideClearanceHot = ringSideHot("oil", "0.0326 mm");
