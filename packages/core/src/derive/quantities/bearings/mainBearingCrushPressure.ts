import { bearings } from "../../bearings/Bearing.ts";
import { shellCrushPressure } from "../../bearings/crush.ts";

export const mainBearingCrushPressure = shellCrushPressure(bearings.main);
