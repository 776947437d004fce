import { quantity } from "../../Quantity.ts";

export const peakPressureUse = quantity({
  id: "peakPressureUse",
  name: "Peak pressure entered over that estimated",
  symbol: "k_pe",
  unit: "1",
  decimals: 2,
  system: "targets",
  meaning:
    "Peak pressure of the strength checks over that which a working cycle of this power would have. Far below 1 the checks are too kind; far above 1 parts are judged for a load that this power does not bring.",
  inputs: { p_max: "targets.peakCylinderPressure", p_pe: "peakPressureEstimate" },
  formula: "p_max / p_pe",
  compute: ({ p_max, p_pe }) => p_max / p_pe,
  shape: "guarded",
  valid: "as for the estimate: within about 15 %",
  sources: [{ id: "definition" }],
  examples: [{ given: { p_max: "158 bar", p_pe: "150 bar" }, expect: "1.05" }],
  display: true,
});
