import { meanPistonSpeed as speedOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const meanPistonSpeedAtPower = quantity({
  id: "meanPistonSpeedAtPower",
  name: "Mean piston speed at the target power",
  symbol: "S_pP",
  unit: "m/s",
  decimals: 2,
  system: "targets",
  meaning:
    "Average speed of the piston at the speed of the target power: two strokes in each turn. Breathing is judged by it.",
  inputs: { S_0: "crankshaft.stroke", n_P: "targets.powerSpeed" },
  formula: "S_0 * n_P / pi",
  compute: ({ S_0, n_P }) => speedOf({ stroke: S_0, angularSpeed: n_P }),
  shape: "monotone",
  valid: "stroke as on the crankshaft's sheet: an offset pin line adds less than a thousandth",
  sources: [{ id: "heywood" }],
  examples: [{ given: { S_0: "94.0006 mm", n_P: "7400 rpm" }, expect: "23.19 m/s" }],
  display: true,
});
