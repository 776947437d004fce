import { quantity } from "../../Quantity.ts";

export const trappedRatioExcess = quantity({
  id: "trappedRatioExcess",
  name: "Trapped ratio beyond what the octane allows",
  symbol: "Delta_epsilon",
  unit: "1",
  decimals: 2,
  system: "charge",
  meaning:
    "Trapped compression ratio less the one that the petrol usually bears. Negative while there is something in hand; the further above zero, the nearer is knock.",
  inputs: { epsilon_tr: "trappedCompressionRatio", epsilon_oct: "trappedRatioForOctane" },
  formula: "epsilon_tr - epsilon_oct",
  compute: ({ epsilon_tr, epsilon_oct }) => epsilon_tr - epsilon_oct,
  shape: "guarded",
  valid: "as for the two ratios that it compares",
  sources: [{ id: "definition" }],
  examples: [{ given: { epsilon_tr: "8.2", epsilon_oct: "8.5" }, expect: "-0.30" }],
});
