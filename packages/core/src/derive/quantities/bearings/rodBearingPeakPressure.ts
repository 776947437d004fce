import { rodFilm } from "../../bearings/rodFilm.ts";

export const rodBearingPeakPressure = rodFilm({
  id: "rodBearingPeakPressure",
  name: "Film pressure in the rod bearing",
  symbol: "p_fr",
  unit: "MPa",
  decimals: 0,
  meaning: "Greatest pressure in the oil film under the mean load.",
  of: ({ peakPressure }) => peakPressure,
  expect: "177 MPa",
});
