import { quantity } from "../../Quantity.ts";

export const airDemandRatio = quantity({
  id: "airDemandRatio",
  name: "Manifold pressure needed over planned",
  symbol: "k_a",
  unit: "1",
  decimals: 2,
  system: "charge",
  meaning:
    "Above 1 the planned pressure does not bring in the air that the target power asks for; well below 1 there is more boost than needed.",
  inputs: { p_mn: "manifoldPressureNeeded", p_m: "induction.manifoldPressure" },
  formula: "p_mn / p_m",
  compute: ({ p_mn, p_m }) => p_mn / p_m,
  shape: "guarded",
  valid: "as for the pressure needed",
  sources: [{ id: "definition" }],
  examples: [{ given: { p_mn: "2.87 bar", p_m: "2.99 bar" }, expect: "0.96" }],
});
