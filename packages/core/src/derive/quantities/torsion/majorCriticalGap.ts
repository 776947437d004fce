import { quantity } from "../../Quantity.ts";

export const majorCriticalGap = quantity({
  id: "majorCriticalGap",
  name: "Gap to the nearest major critical",
  symbol: "g_k",
  unit: "%",
  decimals: 1,
  system: "torsion",
  meaning: "How far the nearest major critical speed lies from the highest speed, as a share of it.",
  inputs: { n_k: "nearestMajorCritical", n: "targets.speed" },
  formula: "abs(n_k - n) / n",
  compute: ({ n_k, n }) => Math.abs(n_k - n) / n,
  shape: "guarded",
  valid: "as the critical speed",
  sources: [{ id: "definition" }],
  examples: [{ given: { n_k: "7664 rpm", n: "7000 rpm" }, expect: "9.5 %" }],
  display: true,
});
