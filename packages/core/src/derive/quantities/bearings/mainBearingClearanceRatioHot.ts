import { bearings } from "../../bearings/Bearing.ts";
import { clearanceRatioHot } from "../../bearings/clearanceRatioHot.ts";

export const mainBearingClearanceRatioHot = clearanceRatioHot(bearings.main);
