import { quantity } from "../../Quantity.ts";

export const contactLossReserve = quantity({
  id: "contactLossReserve",
  name: "Reserve against loss of contact",
  symbol: "S_f",
  unit: "1",
  decimals: 2,
  system: "valve-train",
  meaning: "Speed at which the valve train loses contact over the highest speed.",
  inputs: { n_f: "contactLossSpeed", n: "targets.speed" },
  formula: "n_f / n",
  compute: ({ n_f, n }) => n_f / n,
  shape: "guarded",
  valid: "as the speed of lost contact",
  sources: [{ id: "definition" }],
  examples: [{ given: { n_f: "9100 rpm", n: "8000 rpm" }, expect: "1.14" }],
});
