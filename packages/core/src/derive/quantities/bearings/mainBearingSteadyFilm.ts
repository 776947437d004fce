import { bearings } from "../../bearings/Bearing.ts";
import { film, films } from "../../bearings/film.ts";

export const mainBearingSteadyFilm = film(bearings.main, films.film, { expect: "1.93 um" });
