import { edgeToCounterweightAngle, lowestEdge } from "../../clearances/overCounterweight.ts";

export const pistonToCounterweightAngle = edgeToCounterweightAngle({
  id: "pistonToCounterweightAngle",
  name: "Crank angle of the piston nearest to the counterweight",
  symbol: "theta_pc",
  edge: lowestEdge,
  expect: "179.7 deg",
});
