import { bearings } from "../../bearings/Bearing.ts";
import { clearanceHot } from "../../bearings/clearanceHot.ts";

export const rodBearingClearanceHot = clearanceHot(bearings.rod, "0.079 mm");
