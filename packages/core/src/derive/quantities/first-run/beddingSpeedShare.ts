import { quantity } from "../../Quantity.ts";

export const beddingSpeedShare = quantity({
  id: "beddingSpeedShare",
  name: "Bedding-in speed over highest speed",
  symbol: "k_b",
  unit: "1",
  decimals: 3,
  system: "first-run",
  meaning: "Highest speed allowed while rings and followers bed in, over the speed of the limiter.",
  inputs: { n_b: "running.beddingSpeed", n: "targets.speed" },
  formula: "n_b / n",
  compute: ({ n_b, n }) => n_b / n,
  shape: "monotone",
  valid: "the first hours",
  sources: [{ id: "definition" }],
  examples: [{ given: { n_b: "5850 rpm", n: "7800 rpm" }, expect: "0.750" }],
});
