import { quantity } from "../../Quantity.ts";

export const trappedRatioForOctane = quantity({
  id: "trappedRatioForOctane",
  name: "Trapped ratio that the octane allows",
  symbol: "epsilon_oct",
  unit: "1",
  decimals: 2,
  system: "charge",
  meaning:
    "Trapped compression ratio that a petrol of this research octane number usually bears without boost: a straight line through 8.0 at 95 and 8.5 at 98, with its own spread about it. A rule of thumb with no physics beyond the trend.",
  inputs: { RON: "fuel.researchOctane", delta_oct: "combustion.octaneTrendSpread" },
  formula: "8 + (RON - 95) / 6 + delta_oct",
  compute: ({ RON, delta_oct }) => 8 + (RON - 95) / 6 + delta_oct,
  shape: "monotone",
  valid: "petrol, no boost, research octane from about 79 to 102",
  sources: [{ id: "from-memory" }],
  examples: [
    { given: { RON: "95", delta_oct: "0" }, expect: "8.00" },
    { given: { RON: "98", delta_oct: "0" }, expect: "8.50" },
    { given: { RON: "98", delta_oct: "-0.4" }, expect: "8.10" },
  ],
});
