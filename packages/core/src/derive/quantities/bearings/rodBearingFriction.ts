import { bearings } from "../../bearings/Bearing.ts";
import { film, films } from "../../bearings/film.ts";

export const rodBearingFriction = film(bearings.rod, films.friction, { expect: "777 W" });
