import { bearings } from "../../bearings/Bearing.ts";
import { film, films } from "../../bearings/film.ts";

export const mainBearingSideFlow = film(bearings.main, films.flow, {
  id: "mainBearingSideFlow",
  symbol: "Q_ms",
  expect: "0.57 L/min",
});
