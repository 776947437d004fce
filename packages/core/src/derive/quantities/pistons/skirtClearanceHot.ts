import { hotClearance } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../../../tables/referenceTemperature.ts";
import { quantity } from "../../Quantity.ts";

export const skirtClearanceHot = quantity({
  id: "skirtClearanceHot",
  name: "Piston to bore, hot",
  symbol: "C_sh",
  unit: "mm",
  decimals: 3,
  system: "pistons",
  meaning:
    "Clearance of the skirt in the bore at full load. A few hundredths below zero still run, since the skirt gives way (common practice); more scuffs.",
  inputs: {
    B: "block.bore",
    alpha_b: "block.expansion",
    T_b: "conditions.blockTemperature",
    D: "piston.diameter",
    alpha_p: "piston.expansion",
    T_s: "conditions.skirtTemperature",
  },
  formula: `B * (1 + alpha_b * (T_b - ${REFERENCE_TEMPERATURE})) - D * (1 + alpha_p * (T_s - ${REFERENCE_TEMPERATURE}))`,
  compute: ({ B, alpha_b, T_b, D, alpha_p, T_s }) =>
    hotClearance({
      bore: { size: B, expansion: alpha_b, temperatureRise: T_b - REFERENCE_TEMPERATURE },
      shaft: { size: D, expansion: alpha_p, temperatureRise: T_s - REFERENCE_TEMPERATURE },
    }),
  shape: "monotone",
  valid: "at the gauge point; a bore in the block’s own metal, each part at one temperature",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        B: "86.5 mm",
        alpha_b: "11e-6 1/K",
        T_b: "105 degC",
        D: "86.41 mm",
        alpha_p: "22.3e-6 1/K",
        T_s: "122 degC",
      },
      expect: "-0.026 mm",
    },
  ],
  display: true,
});
