import { mechanicalEfficiency as efficiencyOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const mechanicalEfficiency = quantity({
  id: "mechanicalEfficiency",
  name: "Mechanical efficiency",
  symbol: "eta_m",
  unit: "%",
  decimals: 0,
  system: "targets",
  meaning:
    "Share of the gas work that reaches the crankshaft at the target power. High speed with little mean pressure makes it poor: then speed costs more than it gives.",
  inputs: { p_me: "brakeMeanEffectivePressure", p_mi: "indicatedMeanEffectivePressure" },
  formula: "p_me / p_mi",
  compute: ({ p_me, p_mi }) => efficiencyOf({ brake: p_me, indicated: p_mi }),
  shape: "guarded",
  valid: "as for the friction",
  sources: [{ id: "heywood" }],
  examples: [{ given: { p_me: "32.29 bar", p_mi: "37.11 bar" }, expect: "87 %" }],
  display: true,
});
