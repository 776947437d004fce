import { axialShift } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../../../tables/referenceTemperature.ts";
import { quantity } from "../../Quantity.ts";

export const endCylinderShift = quantity({
  id: "endCylinderShift",
  name: "Shift of the end cylinder when hot",
  symbol: "Delta_z",
  unit: "mm",
  decimals: 3,
  system: "bearings",
  meaning:
    "How far the block outgrows the crankshaft at the cylinder farthest from the thrust bearing: the rod there stands off its cylinder by as much.",
  inputs: {
    z_e: "crankshaft.thrustToEnd",
    alpha_b: "block.expansion",
    T_b: "conditions.blockTemperature",
    alpha_c: "crankshaft.expansion",
    T_c: "conditions.crankshaftTemperature",
  },
  formula: `z_e * (alpha_b * (T_b - ${REFERENCE_TEMPERATURE}) - alpha_c * (T_c - ${REFERENCE_TEMPERATURE}))`,
  compute: ({ z_e, alpha_b, T_b, alpha_c, T_c }) =>
    axialShift({
      block: { size: z_e, expansion: alpha_b, temperatureRise: T_b - REFERENCE_TEMPERATURE },
      crankshaft: { size: z_e, expansion: alpha_c, temperatureRise: T_c - REFERENCE_TEMPERATURE },
    }),
  shape: "monotone",
  valid: "one temperature a part",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        z_e: "400 mm",
        alpha_b: "21.5e-6 1/K",
        T_b: "100 degC",
        alpha_c: "12e-6 1/K",
        T_c: "110 degC",
      },
      expect: "0.256 mm",
    },
  ],
  display: true,
});
