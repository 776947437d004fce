import { quantity } from "../../Quantity.ts";

export const ringAccelerationIndex = quantity({
  id: "ringAccelerationIndex",
  name: "Ring height times acceleration",
  symbol: "k_f",
  unit: "m2/s2",
  decimals: 1,
  system: "rings",
  meaning:
    "Height of the top ring times the greatest acceleration of the piston at the highest speed intended. The heavier the ring for its area, the easier it lifts off its groove (flutters) near top dead centre.",
  inputs: { h_r1: "ringSet.topRingHeight", a_max: "greatestPistonAcceleration" },
  formula: "h_r1 * a_max",
  compute: ({ h_r1, a_max }) => h_r1 * a_max,
  shape: "guarded",
  valid: "rings of like material; for comparison and rules of thumb",
  sources: [{ id: "common-practice" }],
  examples: [{ given: { h_r1: "1.2 mm", a_max: "41557 m/s2" }, expect: "49.9 m2/s2" }],
});
