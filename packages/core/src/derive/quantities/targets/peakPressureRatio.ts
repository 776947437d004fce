import { quantity } from "../../Quantity.ts";

export const peakPressureRatio = quantity({
  id: "peakPressureRatio",
  name: "Peak pressure over mean pressure",
  symbol: "k_p",
  unit: "1",
  decimals: 2,
  system: "targets",
  meaning:
    "Peak cylinder pressure over brake mean effective pressure: shows whether the pressure entered for the strength checks suits the power asked for. Usual values are 6 to 8 without boost, 4.3 to 6 with it (from memory).",
  inputs: { p_max: "targets.peakCylinderPressure", p_me: "brakeMeanEffectivePressure" },
  formula: "p_max / p_me",
  compute: ({ p_max, p_me }) => p_max / p_me,
  shape: "guarded",
  valid: "four-stroke engines with spark ignition; heavy knock goes far above",
  sources: [{ id: "from-memory" }],
  examples: [{ given: { p_max: "158 bar", p_me: "32.29 bar" }, expect: "4.89" }],
});
