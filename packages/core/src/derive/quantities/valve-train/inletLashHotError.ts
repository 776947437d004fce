import { lashHotError } from "../../valves/lashHotError.ts";

export const inletLashHotError = lashHotError("inlet");
