import { quantity } from "../../Quantity.ts";

export const powerSpeedShare = quantity({
  id: "powerSpeedShare",
  name: "Power speed over highest speed",
  symbol: "k_P",
  unit: "1",
  decimals: 3,
  system: "targets",
  meaning:
    "Speed at which the target power is meant, over the highest speed intended. Above 1 the power would lie beyond the limiter, where the engine never runs.",
  inputs: { n_P: "targets.powerSpeed", n: "targets.speed" },
  formula: "n_P / n",
  compute: ({ n_P, n }) => n_P / n,
  shape: "monotone",
  valid: "any engine",
  sources: [{ id: "definition" }],
  examples: [{ given: { n_P: "7400 rpm", n: "7800 rpm" }, expect: "0.949" }],
});
