import { chargeCoolerOutlet } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const cooledChargeTemperature = quantity({
  id: "cooledChargeTemperature",
  name: "Charge temperature after the cooler",
  symbol: "T_cc",
  unit: "degC",
  decimals: 0,
  system: "charge",
  meaning:
    "Temperature of the charge that compressor and cooler give. Fuel that evaporates before the valve cools it further.",
  inputs: {
    T_co: "compressorOutletTemperature",
    epsilon_i: "induction.coolerEffectiveness",
    T_k: "induction.coolingTemperature",
  },
  formula: "T_co - epsilon_i * (T_co - T_k)",
  compute: ({ T_co, epsilon_i, T_k }) =>
    chargeCoolerOutlet({ inletTemperature: T_co, effectiveness: epsilon_i, coolantTemperature: T_k }),
  shape: "monotone",
  valid: "steady full load; a cooler that starts cold does better for some seconds",
  sources: [{ id: "definition" }],
  examples: [{ given: { T_co: "447 K", epsilon_i: "80 %", T_k: "293 K" }, expect: "51 degC" }],
  display: true,
});
