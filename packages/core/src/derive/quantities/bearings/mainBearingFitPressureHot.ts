import { bearings } from "../../bearings/Bearing.ts";
import { fitPressure } from "../../bearings/fitPressure.ts";

export const mainBearingFitPressureHot = fitPressure(bearings.main, { state: "hot", expect: "4.37 MPa" });
