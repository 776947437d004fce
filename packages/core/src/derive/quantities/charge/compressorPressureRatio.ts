import { compressorPressureRatio as ratioOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const compressorPressureRatio = quantity({
  id: "compressorPressureRatio",
  name: "Pressure ratio of the compressor",
  symbol: "Pi_c",
  unit: "1",
  decimals: 2,
  system: "charge",
  meaning:
    "Absolute pressure that the compressor must give over that of the air it draws: the manifold pressure and what is lost on the way, over ambient. With the air flow it finds the point on the compressor’s map.",
  inputs: {
    p_m: "induction.manifoldPressure",
    Delta_p_i: "induction.pressureLoss",
    p_a: "conditions.ambientPressure",
  },
  formula: "(p_m + Delta_p_i) / p_a",
  compute: ({ p_m, Delta_p_i, p_a }) =>
    ratioOf({ manifoldPressure: p_m, ambientPressure: p_a, inletLoss: 0, outletLoss: Delta_p_i }),
  shape: "monotone",
  valid: "charged engines; all losses counted after the compressor",
  sources: [{ id: "definition" }],
  examples: [{ given: { p_m: "2.9 bar", Delta_p_i: "0.1 bar", p_a: "0.97 bar" }, expect: "3.09" }],
  display: true,
});
