import { quantity } from "../../Quantity.ts";

export const crankingPressureShare = quantity({
  id: "crankingPressureShare",
  name: "Cranking pressure measured over computed",
  symbol: "q_cr",
  unit: "1",
  decimals: 3,
  system: "compression",
  meaning:
    "Cranking pressure on the gauge over the one that compression ratio and inlet closing lead to expect.",
  inputs: { p_crm: "conditions.crankingPressure", p_cr: "crankingPressure" },
  formula: "p_crm / p_cr",
  compute: ({ p_crm, p_cr }) => p_crm / p_cr,
  shape: "guarded",
  valid: "warm engine, throttle open, the battery turning it briskly",
  sources: [{ id: "definition" }],
  examples: [{ given: { p_crm: "9 bar", p_cr: "10.51 bar" }, expect: "0.856" }],
});
