import { quantity } from "../../Quantity.ts";

export const compressionRatioError = quantity({
  id: "compressionRatioError",
  name: "Compression ratio less target",
  symbol: "Delta_epsilon",
  unit: "1",
  decimals: 2,
  system: "compression",
  meaning:
    "Compression ratio that these parts give less the one wanted; positive when it comes out too high.",
  inputs: { epsilon: "compressionRatio", epsilon_t: "targets.compressionRatio" },
  formula: "epsilon - epsilon_t",
  compute: ({ epsilon, epsilon_t }) => epsilon - epsilon_t,
  shape: "guarded",
  valid: "any engine",
  sources: [{ id: "definition" }],
  examples: [{ given: { epsilon: "9.367", epsilon_t: "9.4" }, expect: "-0.03" }],
});
