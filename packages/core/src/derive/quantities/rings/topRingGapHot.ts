import { hotRingGap } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

/** Linear expansion of ring steel and of cast iron [1/K]. Source: from memory. */
const STEEL = 12.0e-6;
const IRON = 11.0e-6;
/** 20 °C, at which parts are measured [K]. */
const COLD = 293.15;

export const topRingGapHot = quantity({
  id: "topRingGapHot",
  name: "Top ring end gap, hot",
  symbol: "s_1h",
  unit: "mm",
  decimals: 3,
  system: "rings",
  meaning:
    "What is left of the top ring’s end gap at full load, when ring and cylinder have warmed up from 20 °C; at zero the ends butt and the ring seizes. The ring is taken as steel and the bore as cast iron, which is also what most aluminium blocks are lined with.",
  inputs: {
    s_1: "ringSet.topRingEndGap",
    B: "block.bore",
    T_r: "conditions.topRingTemperature",
    T_w: "conditions.cylinderTopTemperature",
  },
  formula: "s_1 - pi * B * (12.0e-6 * (T_r - 293.15) - 11.0e-6 * (T_w - 293.15))",
  compute: ({ s_1, B, T_r, T_w }) =>
    hotRingGap({
      coldGap: s_1,
      bore: B,
      ringExpansion: STEEL,
      ringTemperatureRise: T_r - COLD,
      boreExpansion: IRON,
      boreTemperatureRise: T_w - COLD,
    }),
  shape: "monotone",
  valid:
    "steel ring (12·10⁻⁶ 1/K) in a cast-iron bore (11·10⁻⁶ 1/K); a bore in bare aluminium grows more and leaves more gap",
  sources: [{ id: "plane-geometry" }, { id: "from-memory", where: "expansion of steel and cast iron" }],
  examples: [
    { given: { s_1: "0.58 mm", B: "86.5 mm", T_r: "225 degC", T_w: "155 degC" }, expect: "0.315 mm" },
    { given: { s_1: "0.58 mm", B: "86.5 mm", T_r: "230 degC", T_w: "160 degC" }, expect: "0.314 mm" },
  ],
});
