import { airMassFlow as flowOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const airMassFlow = quantity({
  id: "airMassFlow",
  name: "Air mass flow",
  symbol: "m_a",
  unit: "kg/s",
  decimals: 4,
  system: "charge",
  meaning: "Air that the engine must take in at the target power: fuel flow times air-fuel ratio.",
  inputs: { P_c: "crankPower", b_e: "fuel.specificConsumption", AFR: "fuel.airFuelRatio" },
  formula: "P_c * b_e * AFR",
  compute: ({ P_c, b_e, AFR }) => flowOf({ power: P_c, specificFuelConsumption: b_e, airFuelRatio: AFR }),
  shape: "monotone",
  valid: "consumption and mixture as at the target power",
  sources: [{ id: "heywood" }],
  examples: [{ given: { P_c: "440 kW", b_e: "440 g/kWh", AFR: "7.8" }, expect: "0.4195 kg/s" }],
});
