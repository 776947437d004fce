import { valveDeceleration } from "../../valves/valveMotion.ts";

export const inletValveDeceleration = valveDeceleration("inlet", "4468 m/s2", "5441 m/s2");
