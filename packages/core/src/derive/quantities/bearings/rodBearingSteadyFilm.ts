import { bearings } from "../../bearings/Bearing.ts";
import { film, films } from "../../bearings/film.ts";

export const rodBearingSteadyFilm = film(bearings.rod, films.film, { expect: "1.93 um" });
