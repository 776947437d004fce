import { rodFilm } from "../../bearings/rodFilm.ts";

export const rodBearingFlow = rodFilm({
  id: "rodBearingFlow",
  name: "Oil flow of a rod bearing",
  symbol: "Q_r",
  unit: "L/min",
  decimals: 2,
  meaning:
    "Oil that leaves the loaded film of one rod bearing over its sides, drawn along by the journal; the supply pressure adds to it.",
  of: ({ sideFlow }) => sideFlow,
  expect: "0.57 L/min",
});
