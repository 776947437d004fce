import { valveSpeed } from "../../valves/valveMotion.ts";

export const exhaustValveSpeed = valveSpeed("exhaust", "4.84 m/s", "5.05 m/s");
