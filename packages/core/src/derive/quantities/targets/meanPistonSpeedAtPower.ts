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
  inputs: { S: "pistonStroke", n_P: "targets.powerSpeed" },
  formula: "S * n_P / pi",
  compute: ({ S, n_P }) => speedOf({ stroke: S, angularSpeed: n_P }),
  shape: "guarded",
  valid: "any engine with a crankshaft",
  sources: [{ id: "heywood" }],
  examples: [{ given: { S: "94.0006 mm", n_P: "7400 rpm" }, expect: "23.19 m/s" }],
  display: true,
});
