import { edgeToCounterweight, skirtEdge } from "../../clearances/overCounterweight.ts";

export const skirtToCounterweight = edgeToCounterweight({
  id: "skirtToCounterweight",
  name: "Skirt to counterweight",
  symbol: "c_sc",
  edge: skirtEdge,
  meaning:
    "Least distance between the end of the skirt, from its inside to its outside, and the rim of the counterweights; negative when they strike, if the skirt reaches over the counterweight along the crankshaft.",
  expect: "6.81 mm",
  display: true,
});
