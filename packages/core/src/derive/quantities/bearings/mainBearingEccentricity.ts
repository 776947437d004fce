import { bearings } from "../../bearings/Bearing.ts";
import { film, films } from "../../bearings/film.ts";

export const mainBearingEccentricity = film(bearings.main, films.eccentricity, { expect: "0.940" });
