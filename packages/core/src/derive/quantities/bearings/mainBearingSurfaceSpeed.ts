import { bearings } from "../../bearings/Bearing.ts";
import { surfaceSpeed } from "../../bearings/surfaceSpeed.ts";

export const mainBearingSurfaceSpeed = surfaceSpeed(bearings.main);
