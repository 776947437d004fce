import { pistonToValve } from "../../valves/pistonToValve.ts";

export const inletPistonToValve = pistonToValve({ side: "inlet", expect: "2.19 mm" });
