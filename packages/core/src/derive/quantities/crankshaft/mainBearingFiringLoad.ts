import { quantity } from "../../Quantity.ts";

export const mainBearingFiringLoad = quantity({
  id: "mainBearingFiringLoad",
  name: "Load of one throw on a main bearing",
  symbol: "F_mb",
  unit: "kN",
  decimals: 1,
  system: "crankshaft",
  meaning:
    "Half the greatest crankpin load: what one throw between two main bearings gives to each, before its neighbour and the counterweights.",
  inputs: { F_cp: "greatestCrankpinLoad" },
  formula: "F_cp / 2",
  compute: ({ F_cp }) => F_cp / 2,
  shape: "guarded",
  valid: "each throw as a beam on two bearings; within about 20 %",
  sources: [{ id: "taylor" }],
  examples: [{ given: { F_cp: "80 kN" }, expect: "40.0 kN" }],
  display: true,
});
