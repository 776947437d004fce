import { hotCrankEndPlay } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../../../tables/referenceTemperature.ts";
import { STEEL } from "../../../tables/usualMetals.ts";
import { quantity } from "../../Quantity.ts";

export const crankEndPlayHot = quantity({
  id: "crankEndPlayHot",
  name: "Crankshaft end play hot",
  symbol: "E_ch",
  unit: "mm",
  decimals: 3,
  system: "bearings",
  meaning:
    "End play at full load: the crankshaft’s journal grows, and web and washers grow into it. An aluminium block takes some away.",
  inputs: {
    E_c: "crankEndPlay",
    L_th: "crankshaft.thrustLength",
    w_th: "mainBearing.thrustWebWidth",
    t_th: "mainBearing.thrustWasher",
    alpha_c: "crankshaft.expansion",
    alpha_b: "block.expansion",
    T_c: "conditions.crankshaftTemperature",
    T_b: "conditions.blockTemperature",
  },
  formula: `E_c + L_th * alpha_c * (T_c - ${REFERENCE_TEMPERATURE}) - w_th * alpha_b * (T_b - ${REFERENCE_TEMPERATURE}) - 2 * t_th * ${STEEL.expansionText} * (T_b - ${REFERENCE_TEMPERATURE})`,
  compute: ({ E_c, L_th, w_th, t_th, alpha_c, alpha_b, T_c, T_b }) =>
    hotCrankEndPlay({
      endPlay: E_c,
      journal: { size: L_th, expansion: alpha_c, temperatureRise: T_c - REFERENCE_TEMPERATURE },
      web: { size: w_th, expansion: alpha_b, temperatureRise: T_b - REFERENCE_TEMPERATURE },
      washer: { size: t_th, expansion: STEEL.expansion, temperatureRise: T_b - REFERENCE_TEMPERATURE },
    }),
  shape: "monotone",
  valid: "each part at one temperature; steel-backed washers as hot as the block",
  sources: [{ id: "plane-geometry" }, { id: "from-memory", where: "expansion of the washers’ steel" }],
  examples: [
    {
      given: {
        E_c: "0.16 mm",
        L_th: "27.2 mm",
        w_th: "22 mm",
        t_th: "2.52 mm",
        alpha_c: "12 um/(m K)",
        alpha_b: "21.5 um/(m K)",
        T_c: "110 degC",
        T_b: "95 degC",
      },
      expect: "0.149 mm",
    },
  ],
  display: true,
});
