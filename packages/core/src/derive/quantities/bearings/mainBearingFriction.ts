import { bearings } from "../../bearings/Bearing.ts";
import { film, films } from "../../bearings/film.ts";

export const mainBearingFriction = film(bearings.main, films.friction, { expect: "777 W" });
