import { compressionPressure } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const compressionEndPressure = quantity({
  id: "compressionEndPressure",
  name: "Pressure at the end of compression",
  symbol: "p_ce",
  unit: "bar",
  decimals: 1,
  system: "compression",
  meaning:
    "Absolute pressure that the running engine’s charge would reach at top dead centre if it were not lit. The spark has to jump against it, and burning multiplies it.",
  inputs: { p_ic: "inletClosingPressure", epsilon_tr: "trappedCompressionRatio" },
  formula: "p_ic * epsilon_tr^1.32",
  compute: ({ p_ic, epsilon_tr }) =>
    compressionPressure({
      inletPressure: p_ic,
      trappedCompressionRatio: epsilon_tr,
      polytropicExponent: 1.32,
    }),
  shape: "guarded",
  valid: "full load; exponent 1.32, engines lie between 1.28 and 1.35 (from memory)",
  sources: [{ id: "heywood" }, { id: "from-memory" }],
  examples: [{ given: { p_ic: "2 bar", epsilon_tr: "7.04" }, expect: "26.3 bar" }],
  display: true,
});
