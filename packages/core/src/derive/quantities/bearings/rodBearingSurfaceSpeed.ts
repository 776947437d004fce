import { bearings } from "../../bearings/Bearing.ts";
import { surfaceSpeed } from "../../bearings/surfaceSpeed.ts";

export const rodBearingSurfaceSpeed = surfaceSpeed(bearings.rod);
