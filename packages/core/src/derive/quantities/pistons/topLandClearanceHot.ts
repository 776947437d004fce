import { hotClearance } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../../../tables/referenceTemperature.ts";
import { IRON } from "../../../tables/usualMetals.ts";
import { quantity } from "../../Quantity.ts";

export const topLandClearanceHot = quantity({
  id: "topLandClearanceHot",
  name: "Top land clearance, hot",
  symbol: "C_tlh",
  unit: "mm",
  decimals: 3,
  system: "pistons",
  meaning:
    "Clearance of the piston’s top land in the cylinder at full load, on the diameter. The land is hottest and must never touch.",
  inputs: {
    B: "block.bore",
    T_w: "conditions.cylinderTopTemperature",
    D_tl: "piston.topLandDiameter",
    alpha_p: "piston.expansion",
    T_tl: "conditions.topLandTemperature",
  },
  formula: `B * (1 + ${IRON.expansionText} * (T_w - ${REFERENCE_TEMPERATURE})) - D_tl * (1 + alpha_p * (T_tl - ${REFERENCE_TEMPERATURE}))`,
  compute: ({ B, T_w, D_tl, alpha_p, T_tl }) =>
    hotClearance({
      bore: { size: B, expansion: IRON.expansion, temperatureRise: T_w - REFERENCE_TEMPERATURE },
      shaft: { size: D_tl, expansion: alpha_p, temperatureRise: T_tl - REFERENCE_TEMPERATURE },
    }),
  shape: "monotone",
  valid: "a cast-iron bore",
  sources: [{ id: "plane-geometry" }, { id: "from-memory", where: "expansion of cast iron" }],
  examples: [
    {
      given: { B: "86.5 mm", T_w: "155 degC", D_tl: "85.85 mm", alpha_p: "22.3e-6 1/K", T_tl: "260 degC" },
      expect: "0.319 mm",
    },
  ],
  display: true,
});
