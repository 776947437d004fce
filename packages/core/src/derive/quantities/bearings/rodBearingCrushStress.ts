import { bearings } from "../../bearings/Bearing.ts";
import { shellCrushStress } from "../../bearings/crush.ts";

export const rodBearingCrushStress = shellCrushStress(bearings.rod);
