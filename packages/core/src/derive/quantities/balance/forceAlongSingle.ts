import { singleResidual } from "../../singleResidual.ts";

export const forceAlongSingle = singleResidual({
  id: "forceAlongSingle",
  name: "Primary force along one cylinder",
  symbol: "F_1y",
  meaning:
    "What the counterweights leave of one cylinder’s primary force along its axis, at the highest speed. In a single it is what the frame feels up and down.",
  direction: "along",
  valid: "the first order alone; the second stays in any case",
  expect: "8.89 kN",
});
