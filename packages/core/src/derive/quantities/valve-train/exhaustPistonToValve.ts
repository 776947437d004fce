import { pistonToValve } from "../../valves/pistonToValve.ts";

export const exhaustPistonToValve = pistonToValve({ side: "exhaust", expect: "3.01 mm" });
