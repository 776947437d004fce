import { pistonToValveHot } from "../../valves/pistonToValveHot.ts";

export const inletPistonToValveHot = pistonToValveHot("inlet");
