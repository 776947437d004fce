import { edgeToCounterweightAngle, smallEndEdge } from "../../clearances/overCounterweight.ts";

export const smallEndToCounterweightAngle = edgeToCounterweightAngle({
  id: "smallEndToCounterweightAngle",
  name: "Where the small end comes nearest to the counterweight",
  symbol: "theta_ew",
  edge: smallEndEdge,
  expect: "179.7 deg",
});
