import { quantity } from "../../Quantity.ts";

export const measuringTemperatureGap = quantity({
  id: "measuringTemperatureGap",
  name: "Temperature gap in measuring",
  symbol: "Delta_T_ms",
  unit: "K",
  decimals: 1,
  system: "assembly",
  meaning:
    "How far part and gauge differ in temperature, whichever is warmer. Sizes are stated for 20 °C; at equal temperature a steel gauge reads steel right at any, aluminium only near 20 °C.",
  inputs: { T_pt: "assembly.partTemperature", T_ga: "assembly.gaugeTemperature" },
  formula: "abs(T_pt - T_ga)",
  compute: ({ T_pt, T_ga }) => Math.abs(T_pt - T_ga),
  shape: "guarded",
  valid: "both at rest: not just carried in, washed or held in the hand",
  sources: [{ id: "definition" }],
  examples: [
    { given: { T_pt: "23 degC", T_ga: "20 degC" }, expect: "3.0 K" },
    { given: { T_pt: "18 degC", T_ga: "20 degC" }, expect: "2.0 K" },
  ],
});
