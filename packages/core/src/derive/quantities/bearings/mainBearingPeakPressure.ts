import { bearings } from "../../bearings/Bearing.ts";
import { film, films } from "../../bearings/film.ts";

export const mainBearingPeakPressure = film(bearings.main, films.peakPressure, { expect: "177 MPa" });
