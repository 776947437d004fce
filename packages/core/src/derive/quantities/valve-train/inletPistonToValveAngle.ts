import { pistonToValveAngle } from "../../valves/pistonToValve.ts";

export const inletPistonToValveAngle = pistonToValveAngle({ side: "inlet", expect: "5.5 deg" });
