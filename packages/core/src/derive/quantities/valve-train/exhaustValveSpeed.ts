import { valveSpeed } from "../../valves/valveMotion.ts";

export const exhaustValveSpeed = valveSpeed("exhaust", "4.84 m/s");
