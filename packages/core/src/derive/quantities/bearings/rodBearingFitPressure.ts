import { bearings } from "../../bearings/Bearing.ts";
import { fitPressure } from "../../bearings/fitPressure.ts";

export const rodBearingFitPressure = fitPressure(bearings.rod, { state: "cold", expect: "5.56 MPa" });
