import { lashHotError } from "../../valves/lashHotError.ts";

export const exhaustLashHotError = lashHotError("exhaust");
