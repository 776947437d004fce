import { quantity } from "../../Quantity.ts";

export const overspeedRatio = quantity({
  id: "overspeedRatio",
  name: "Overspeed ratio",
  symbol: "k_o",
  unit: "1",
  decimals: 3,
  system: "targets",
  meaning:
    "Speed that a missed shift or a late limiter can reach, over the highest speed intended. Tension loads grow with its square.",
  inputs: { n_o: "targets.overspeed", n: "targets.speed" },
  formula: "n_o / n",
  compute: ({ n_o, n }) => n_o / n,
  shape: "monotone",
  valid: "any engine",
  sources: [{ id: "definition" }],
  examples: [{ given: { n_o: "8200 rpm", n: "7800 rpm" }, expect: "1.051" }],
});
