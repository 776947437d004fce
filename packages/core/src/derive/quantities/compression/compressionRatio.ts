import { compressionRatio as ratioOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const compressionRatio = quantity({
  id: "compressionRatio",
  name: "Compression ratio",
  symbol: "epsilon",
  unit: "1",
  decimals: 2,
  system: "compression",
  meaning:
    "Volume above the piston at bottom dead centre over that at top dead centre, also called static compression ratio.",
  inputs: { V_d: "sweptVolume", V_c: "clearanceVolume" },
  formula: "(V_d + V_c) / V_c",
  compute: ({ V_d, V_c }) => ratioOf({ sweptVolume: V_d, clearanceVolume: V_c }),
  shape: "guarded",
  valid: "cold dimensions",
  sources: [{ id: "definition" }],
  examples: [
    { given: { V_d: "552.399 cm3", V_c: "66.0206 cm3" }, expect: "9.37" },
    {
      given: { V_d: "500 cm3", V_c: "62.5 cm3" },
      expect: "9.0",
      from: { id: "gupta", where: "Example 16.1, p. 519" },
    },
  ],
});
