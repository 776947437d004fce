import { rodFilm } from "../../bearings/rodFilm.ts";

export const rodBearingFriction = rodFilm({
  id: "rodBearingFriction",
  name: "Friction of a rod bearing",
  symbol: "P_fr",
  unit: "W",
  decimals: 0,
  meaning: "Power that one rod bearing turns into heat.",
  of: ({ frictionPower }) => frictionPower,
  expect: "777 W",
});
