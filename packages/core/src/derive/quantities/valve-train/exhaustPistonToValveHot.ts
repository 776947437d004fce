import { pistonToValveHot } from "../../valves/pistonToValveHot.ts";

export const exhaustPistonToValveHot = pistonToValveHot("exhaust");
