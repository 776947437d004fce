import { fuelFlow as flowOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const fuelFlow = quantity({
  id: "fuelFlow",
  name: "Fuel flow",
  symbol: "m_f",
  unit: "g/s",
  decimals: 2,
  system: "charge",
  meaning: "Fuel that the engine takes at the target power; pump, lines and injectors must pass it.",
  inputs: { P_c: "crankPower", b_e: "fuel.specificConsumption" },
  formula: "P_c * b_e",
  compute: ({ P_c, b_e }) => flowOf({ power: P_c, specificFuelConsumption: b_e }),
  shape: "monotone",
  valid: "consumption as at the target power",
  sources: [{ id: "definition" }],
  examples: [{ given: { P_c: "440 kW", b_e: "440 g/kWh" }, expect: "53.78 g/s" }],
});
