import { valveDeceleration } from "../../valves/valveMotion.ts";

export const exhaustValveDeceleration = valveDeceleration("exhaust", "4163 m/s2", "5179 m/s2");
