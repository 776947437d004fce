import { bearings } from "../../bearings/Bearing.ts";
import { shellCrushStress } from "../../bearings/crush.ts";

export const mainBearingCrushStress = shellCrushStress(bearings.main);
