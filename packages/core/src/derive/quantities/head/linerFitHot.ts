import { hotClearance } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../../../tables/referenceTemperature.ts";
import { quantity } from "../../Quantity.ts";

export const linerFitHot = quantity({
  id: "linerFitHot",
  name: "Fit of the dry liner hot",
  symbol: "delta_lh",
  unit: "mm",
  decimals: 3,
  system: "head",
  meaning:
    "Interference that is left between liner and block at full load: positive tight, negative loose. A loose liner carries heat badly, moves and fails the gasket. An aluminium block grows away from an iron liner.",
  inputs: {
    delta_li: "liner.interference",
    D_li: "liner.outerDiameter",
    alpha_li: "liner.expansion",
    T_li: "conditions.linerTemperature",
    alpha_b: "block.expansion",
    T_b: "conditions.blockTemperature",
  },
  formula: `delta_li + D_li * (alpha_li * (T_li - ${REFERENCE_TEMPERATURE}) - alpha_b * (T_b - ${REFERENCE_TEMPERATURE}))`,
  compute: ({ delta_li, D_li, alpha_li, T_li, alpha_b, T_b }) =>
    delta_li -
    hotClearance({
      bore: { size: D_li, expansion: alpha_b, temperatureRise: T_b - REFERENCE_TEMPERATURE },
      shaft: { size: D_li, expansion: alpha_li, temperatureRise: T_li - REFERENCE_TEMPERATURE },
    }),
  shape: "monotone",
  valid: "one temperature for each part",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        delta_li: "0.055 mm",
        D_li: "113.6 mm",
        alpha_li: "11.8 um/(m K)",
        T_li: "110 degC",
        alpha_b: "21.5 um/(m K)",
        T_b: "100 degC",
      },
      expect: "-0.020 mm",
    },
  ],
  display: true,
});
