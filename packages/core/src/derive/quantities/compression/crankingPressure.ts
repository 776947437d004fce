import { crankingPressure as pressureOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const crankingPressure = quantity({
  id: "crankingPressure",
  name: "Cranking pressure",
  symbol: "p_cr",
  unit: "bar",
  decimals: 1,
  system: "compression",
  meaning:
    "What a compression gauge should show at the starter’s speed with an open throttle and a warm engine, above ambient. All cylinders within a few per cent of each other matters more than the figure.",
  inputs: { p_a: "conditions.ambientPressure", epsilon_tr: "trappedCompressionRatio" },
  formula: "p_a * (epsilon_tr^1.25 - 1)",
  compute: ({ p_a, epsilon_tr }) =>
    pressureOf({ ambientPressure: p_a, trappedCompressionRatio: epsilon_tr, polytropicExponent: 1.25 }),
  shape: "guarded",
  valid:
    "within about a tenth: leakage, the gauge’s own volume and the speed move it; exponent 1.25 (common practice)",
  sources: [{ id: "common-practice" }],
  examples: [{ given: { p_a: "1 bar", epsilon_tr: "7.04" }, expect: "10.5 bar" }],
  display: true,
});
