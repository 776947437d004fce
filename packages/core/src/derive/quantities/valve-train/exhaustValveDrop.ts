import { valveDrop } from "../../valves/valveDrop.ts";

export const exhaustValveDrop = valveDrop("exhaust");
