import { bearings } from "../../bearings/Bearing.ts";
import { fitPressure } from "../../bearings/fitPressure.ts";

export const rodBearingFitPressureHot = fitPressure(bearings.rod, { state: "hot", expect: "4.37 MPa" });
