import { hotClearance } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

/** Linear expansion of cast iron, of which cylinders and their liners are made [1/K]. Source: from memory. */
const IRON = 11.0e-6;
/** 20 °C, at which parts are measured [K]. */
const COLD = 293.15;

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
  formula: "B * (1 + 11.0e-6 * (T_w - 293.15)) - D_tl * (1 + alpha_p * (T_tl - 293.15))",
  compute: ({ B, T_w, D_tl, alpha_p, T_tl }) =>
    hotClearance({
      bore: { size: B, expansion: IRON, temperatureRise: T_w - COLD },
      shaft: { size: D_tl, expansion: alpha_p, temperatureRise: T_tl - COLD },
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
