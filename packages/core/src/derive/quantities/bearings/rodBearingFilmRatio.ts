import { bearings } from "../../bearings/Bearing.ts";
import { filmRatio } from "../../bearings/filmRatio.ts";

export const rodBearingFilmRatio = filmRatio(bearings.rod, "h_min");
