import { bearings } from "../../bearings/Bearing.ts";
import { shellCrushPressure } from "../../bearings/crush.ts";

export const rodBearingCrushPressure = shellCrushPressure(bearings.rod);
