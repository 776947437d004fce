import { lashGrowth } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../../../tables/referenceTemperature.ts";
import { STEEL } from "../../../tables/usualMetals.ts";
import { quantity } from "../../Quantity.ts";

export const lashGrowthHot = quantity({
  id: "lashGrowthHot",
  name: "Lash growth, cold to hot",
  symbol: "Delta_s",
  unit: "mm",
  decimals: 3,
  system: "valve-train",
  meaning:
    "How much the lash at the valve grows when a pushrod engine warms up from 20 °C; positive where block and head outgrow the pushrod.",
  inputs: {
    alpha_h: "cylinderHead.expansion",
    H_r: "valveDrive.pivotAboveDeck",
    T_h: "conditions.headTemperature",
    alpha_b: "block.expansion",
    l_pr: "valveDrive.pushrodLength",
    T_b: "conditions.blockTemperature",
    T_pr: "conditions.pushrodTemperature",
    R_r: "valveDrive.rockerRatio",
  },
  formula: `(alpha_h * H_r * (T_h - ${REFERENCE_TEMPERATURE}) + alpha_b * (l_pr - H_r) * (T_b - ${REFERENCE_TEMPERATURE}) - ${STEEL.expansionText} * l_pr * (T_pr - ${REFERENCE_TEMPERATURE})) * R_r`,
  compute: ({ alpha_h, H_r, T_h, alpha_b, l_pr, T_b, T_pr, R_r }) =>
    lashGrowth({
      head: { size: H_r, expansion: alpha_h, temperatureRise: T_h - REFERENCE_TEMPERATURE },
      pushrod: { size: l_pr, expansion: STEEL.expansion, temperatureRise: T_pr - REFERENCE_TEMPERATURE },
      blockExpansion: alpha_b,
      blockTemperatureRise: T_b - REFERENCE_TEMPERATURE,
      rockerRatio: R_r,
    }),
  shape: "monotone",
  valid:
    "steel pushrods; the growth of the valve stem, which closes an exhaust valve’s lash by 0.02 to 0.06 mm, is left out",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        alpha_h: "21.5e-6 1/K",
        H_r: "110 mm",
        T_h: "110 degC",
        alpha_b: "21.5e-6 1/K",
        l_pr: "195 mm",
        T_b: "100 degC",
        T_pr: "95 degC",
        R_r: "1.6",
      },
      expect: "0.294 mm",
    },
  ],
});
