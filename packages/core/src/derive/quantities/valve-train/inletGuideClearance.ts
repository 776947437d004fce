import { guideClearance } from "../../valves/guideClearance.ts";

export const inletGuideClearance = guideClearance("inlet");
