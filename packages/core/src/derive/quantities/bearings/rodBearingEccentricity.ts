import { rodFilm } from "../../bearings/rodFilm.ts";

export const rodBearingEccentricity = rodFilm({
  id: "rodBearingEccentricity",
  name: "Eccentricity of the rod bearing",
  symbol: "epsilon_r",
  unit: "1",
  decimals: 3,
  meaning:
    "Offset of the crankpin in its bearing over the radial clearance, under the mean load: near 1 the film is thin.",
  of: ({ eccentricity }) => eccentricity,
  expect: "0.940",
});
