import { quantity } from "../../Quantity.ts";

export const loggedSpeedUse = quantity({
  id: "loggedSpeedUse",
  name: "Logged speed over checked overspeed",
  symbol: "k_lg",
  unit: "1",
  decimals: 3,
  system: "first-run",
  meaning:
    "Highest speed in the log over the overspeed for which strength and clearances were checked. Above 1 the engine has been where nobody has looked.",
  inputs: { n_lg: "running.highestSpeed", n_o: "targets.overspeed" },
  formula: "n_lg / n_o",
  compute: ({ n_lg, n_o }) => n_lg / n_o,
  shape: "monotone",
  valid: "a log or tell-tale that catches short peaks",
  sources: [{ id: "definition" }],
  examples: [{ given: { n_lg: "8300 rpm", n_o: "8200 rpm" }, expect: "1.012" }],
});
