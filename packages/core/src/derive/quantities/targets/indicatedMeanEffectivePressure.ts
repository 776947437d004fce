import { quantity } from "../../Quantity.ts";

export const indicatedMeanEffectivePressure = quantity({
  id: "indicatedMeanEffectivePressure",
  name: "Indicated mean effective pressure",
  symbol: "p_mi",
  unit: "bar",
  decimals: 2,
  system: "targets",
  meaning:
    "Mean pressure that the gas must give the pistons for the target power: the brake mean effective pressure and friction by speed.",
  inputs: { p_me: "brakeMeanEffectivePressure", p_f1: "frictionBySpeed" },
  formula: "p_me + p_f1",
  compute: ({ p_me, p_f1 }) => p_me + p_f1,
  shape: "guarded",
  valid: "within the doubt of the friction",
  sources: [{ id: "heywood" }],
  examples: [{ given: { p_me: "32.29 bar", p_f1: "4.82 bar" }, expect: "37.11 bar" }],
  display: true,
});
