import { rodFilm } from "../../bearings/rodFilm.ts";

export const rodBearingSteadyFilm = rodFilm({
  id: "rodBearingSteadyFilm",
  name: "Film of the rod bearing, mean load",
  symbol: "h_r",
  unit: "um",
  decimals: 2,
  meaning:
    "Least oil film of the rod bearing under the mean load. The true load swings and squeezes; see the least film over the cycle.",
  of: ({ film }) => film,
  expect: "1.93 um",
});
