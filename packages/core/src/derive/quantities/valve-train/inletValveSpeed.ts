import { valveSpeed } from "../../valves/valveMotion.ts";

export const inletValveSpeed = valveSpeed("inlet", "5.20 m/s", "5.42 m/s");
