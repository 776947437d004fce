import { singleResidual } from "../../singleResidual.ts";

export const forceAcrossSingle = singleResidual({
  id: "forceAcrossSingle",
  name: "Primary force across one cylinder",
  symbol: "F_1x",
  meaning:
    "What the counterweights add across one cylinder’s axis in taking its primary force, at the highest speed.",
  direction: "across",
  valid: "the first order alone",
  expect: "14.51 kN",
});
