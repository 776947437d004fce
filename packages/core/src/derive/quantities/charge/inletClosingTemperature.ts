import { quantity } from "../../Quantity.ts";

export const inletClosingTemperature = quantity({
  id: "inletClosingTemperature",
  name: "Charge temperature at inlet closing",
  symbol: "T_ic",
  unit: "degC",
  decimals: 0,
  system: "charge",
  meaning:
    "Temperature of the gas in the cylinder when the inlet valve has closed: that of the manifold and what the hot cylinder adds. Compression multiplies it, so each kelvin here is about two at the spark.",
  inputs: { T_m: "induction.chargeTemperature", Delta_T_c: "induction.chargeHeating" },
  formula: "T_m + Delta_T_c",
  compute: ({ T_m, Delta_T_c }) => T_m + Delta_T_c,
  shape: "monotone",
  valid: "full load",
  sources: [{ id: "definition" }],
  examples: [{ given: { T_m: "318 K", Delta_T_c: "25 K" }, expect: "70 degC" }],
  display: true,
});
