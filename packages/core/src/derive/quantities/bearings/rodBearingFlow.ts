import { bearings } from "../../bearings/Bearing.ts";
import { film, films } from "../../bearings/film.ts";

export const rodBearingFlow = film(bearings.rod, films.flow, { expect: "0.57 L/min" });
