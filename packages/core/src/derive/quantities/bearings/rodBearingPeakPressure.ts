import { bearings } from "../../bearings/Bearing.ts";
import { film, films } from "../../bearings/film.ts";

export const rodBearingPeakPressure = film(bearings.rod, films.peakPressure, { expect: "177 MPa" });
