import { compressorOutletTemperature as temperatureOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const compressorOutletTemperature = quantity({
  id: "compressorOutletTemperature",
  name: "Compressor outlet temperature",
  symbol: "T_co",
  unit: "degC",
  decimals: 0,
  system: "charge",
  meaning:
    "Temperature of the air behind the compressor, before any cooler. Hot air is thin and knocks: above some 150 °C a street or circuit engine wants a charge cooler.",
  inputs: {
    T_a: "conditions.ambientTemperature",
    Pi_c: "compressorPressureRatio",
    eta_c: "induction.compressorEfficiency",
  },
  formula: "T_a * (1 + (Pi_c^(0.4 / 1.4) - 1) / eta_c)",
  compute: ({ T_a, Pi_c, eta_c }) =>
    temperatureOf({ inletTemperature: T_a, pressureRatio: Pi_c, efficiency: eta_c, heatCapacityRatio: 1.4 }),
  shape: "monotone",
  valid: "air; pressure ratio above 1",
  sources: [{ id: "heywood" }],
  examples: [{ given: { T_a: "293 K", Pi_c: "2.99", eta_c: "70 %" }, expect: "174 degC" }],
  display: true,
});
