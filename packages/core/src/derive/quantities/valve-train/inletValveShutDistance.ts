import { valveShutDistance } from "../../valves/valveShutDistance.ts";

export const inletValveShutDistance = valveShutDistance("inlet");
