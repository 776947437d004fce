import { quantity } from "../../Quantity.ts";

export const compressionHeightChange = quantity({
  id: "compressionHeightChange",
  name: "Change of compression height",
  symbol: "Delta_hc",
  unit: "mm",
  decimals: 2,
  system: "compression",
  meaning:
    "How much the compression height must change so that the piston stops at the same height as before with the new stroke and the new rod; negative for a shorter piston. Half the stroke gained and all the rod gained come off it.",
  inputs: { Delta_S: "strokeGain", l: "connectingRod.length", l_1: "connectingRod.originalLength" },
  formula: "-Delta_S / 2 - (l - l_1)",
  compute: ({ Delta_S, l, l_1 }) => -Delta_S / 2 - (l - l_1),
  shape: "monotone",
  valid: "same block and deck; the small effect of an offset pin line is left out",
  sources: [{ id: "plane-geometry" }],
  examples: [
    { given: { Delta_S: "6 mm", l: "144.5 mm", l_1: "144 mm" }, expect: "-3.50 mm" },
    { given: { Delta_S: "6 mm", l: "144 mm", l_1: "144 mm" }, expect: "-3.00 mm" },
  ],
});
