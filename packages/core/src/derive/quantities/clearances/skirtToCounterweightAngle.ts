import { edgeToCounterweightAngle, skirtEdge } from "../../clearances/overCounterweight.ts";

export const skirtToCounterweightAngle = edgeToCounterweightAngle({
  id: "skirtToCounterweightAngle",
  name: "Crank angle of the skirt nearest to the counterweight",
  symbol: "theta_sc",
  edge: skirtEdge,
  expect: "179.7 deg",
});
