import { valveShutDistance } from "../../valves/valveShutDistance.ts";

export const exhaustValveShutDistance = valveShutDistance("exhaust");
