import { bearings } from "../../bearings/Bearing.ts";
import { fitPressure } from "../../bearings/fitPressure.ts";

export const mainBearingFitPressure = fitPressure(bearings.main, { state: "cold", expect: "5.56 MPa" });
