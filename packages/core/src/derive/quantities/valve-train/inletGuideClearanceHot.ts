import { guideClearanceHot } from "../../valves/guideClearanceHot.ts";

export const inletGuideClearanceHot = guideClearanceHot("inlet", "0.034 mm");
