import { valveDrop } from "../../valves/valveDrop.ts";

export const inletValveDrop = valveDrop("inlet");
