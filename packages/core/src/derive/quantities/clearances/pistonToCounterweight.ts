import { edgeToCounterweight, lowestEdge } from "../../clearances/overCounterweight.ts";

export const pistonToCounterweight = edgeToCounterweight({
  id: "pistonToCounterweight",
  name: "Piston to counterweight",
  symbol: "c_pc",
  edge: lowestEdge,
  meaning:
    "Least distance between the lowest part of the piston and the rim of the counterweights round bottom dead centre; negative when they strike.",
  expect: "4.00 mm",
});
