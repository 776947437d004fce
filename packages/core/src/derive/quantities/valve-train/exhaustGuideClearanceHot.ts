import { guideClearanceHot } from "../../valves/guideClearanceHot.ts";

export const exhaustGuideClearanceHot = guideClearanceHot("exhaust", "0.034 mm");
