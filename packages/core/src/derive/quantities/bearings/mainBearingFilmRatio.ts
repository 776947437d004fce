import { bearings } from "../../bearings/Bearing.ts";
import { filmRatio } from "../../bearings/filmRatio.ts";

export const mainBearingFilmRatio = filmRatio(bearings.main, "h_mc");
