import { edgeToCounterweight, smallEndEdge } from "../../clearances/overCounterweight.ts";

export const smallEndToCounterweight = edgeToCounterweight({
  id: "smallEndToCounterweight",
  name: "Small end to counterweight",
  symbol: "c_ew",
  edge: smallEndEdge,
  meaning:
    "Least distance between the eye of the small end and the rim of the counterweights round bottom dead centre, seen along the crankshaft. Negative: the eye dips below the rim and must pass between the webs.",
  expect: "7.00 mm",
  display: true,
});
