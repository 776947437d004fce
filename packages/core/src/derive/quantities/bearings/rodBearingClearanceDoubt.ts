import { bearings } from "../../bearings/Bearing.ts";
import { clearanceDoubt } from "../../bearings/clearanceDoubt.ts";

export const rodBearingClearanceDoubt = clearanceDoubt(bearings.rod);
