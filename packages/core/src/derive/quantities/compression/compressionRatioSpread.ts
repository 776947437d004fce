import { compressionRatioSpread as spreadOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const compressionRatioSpread = quantity({
  id: "compressionRatioSpread",
  name: "Spread of the compression ratio",
  symbol: "s_epsilon",
  unit: "1",
  decimals: 3,
  system: "compression",
  meaning:
    "Difference of compression ratio between the cylinders with the smallest and the largest chamber. The cylinder with the highest ratio knocks first and sets the timing for all.",
  inputs: { V_d: "sweptVolume", V_c: "clearanceVolume", d_ch: "cylinderHead.chamberSpread" },
  formula: "V_d / (V_c - d_ch / 2) - V_d / (V_c + d_ch / 2)",
  compute: ({ V_d, V_c, d_ch }) => spreadOf({ sweptVolume: V_d, clearanceVolume: V_c, chamberSpread: d_ch }),
  shape: "guarded",
  valid: "decks, pistons and gaskets alike",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { V_d: "552.4 cm3", V_c: "69.02 cm3", d_ch: "0.5 cm3" }, expect: "0.058" }],
  display: true,
});
