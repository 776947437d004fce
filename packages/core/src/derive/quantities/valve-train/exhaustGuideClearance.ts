import { guideClearance } from "../../valves/guideClearance.ts";

export const exhaustGuideClearance = guideClearance("exhaust");
