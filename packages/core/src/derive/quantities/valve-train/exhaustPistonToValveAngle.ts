import { pistonToValveAngle } from "../../valves/pistonToValve.ts";

export const exhaustPistonToValveAngle = pistonToValveAngle({ side: "exhaust", expect: "-5.0 deg" });
