import { bearings } from "../../bearings/Bearing.ts";
import { clearanceHot } from "../../bearings/clearanceHot.ts";

export const mainBearingClearanceHot = clearanceHot(bearings.main, "0.079 mm");
