import { bearings } from "../../bearings/Bearing.ts";
import { film, films } from "../../bearings/film.ts";

export const rodBearingEccentricity = film(bearings.rod, films.eccentricity, { expect: "0.940" });
