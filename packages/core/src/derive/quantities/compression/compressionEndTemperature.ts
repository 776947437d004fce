import { compressionTemperature } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const compressionEndTemperature = quantity({
  id: "compressionEndTemperature",
  name: "Temperature at the end of compression",
  symbol: "T_ce",
  unit: "degC",
  decimals: 0,
  system: "compression",
  meaning:
    "Mean temperature of the unlit charge at top dead centre. The charge that burns last is pressed further and grows hotter still: where it lights by itself, the engine knocks.",
  inputs: { T_ic: "inletClosingTemperature", epsilon_tr: "trappedCompressionRatio" },
  formula: "T_ic * epsilon_tr^0.32",
  compute: ({ T_ic, epsilon_tr }) =>
    compressionTemperature({
      inletTemperature: T_ic,
      trappedCompressionRatio: epsilon_tr,
      polytropicExponent: 1.32,
    }),
  shape: "guarded",
  valid: "full load; exponent 1.32, engines lie between 1.28 and 1.35 (from memory)",
  sources: [{ id: "heywood" }, { id: "from-memory" }],
  examples: [{ given: { T_ic: "340 K", epsilon_tr: "7.04" }, expect: "362 degC" }],
  display: true,
});
