import { bearings } from "../../bearings/Bearing.ts";
import { clearanceMismatch } from "../../bearings/clearanceMismatch.ts";

export const rodBearingClearanceMismatch = clearanceMismatch(bearings.rod);
