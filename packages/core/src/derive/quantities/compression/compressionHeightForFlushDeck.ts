import { compressionHeightNeeded } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const compressionHeightForFlushDeck = quantity({
  id: "compressionHeightForFlushDeck",
  name: "Compression height for a flush deck",
  symbol: "h_c0",
  unit: "mm",
  decimals: 3,
  system: "compression",
  meaning:
    "Compression height with which the flat of the crown would stand level with the deck at top dead centre. Order the piston with this figure less the deck clearance wanted.",
  inputs: { H: "block.deckHeight", r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset" },
  formula: "H - sqrt((l + r)^2 - e^2)",
  compute: ({ H, r, l, e }) =>
    compressionHeightNeeded({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      deckHeight: H,
      deckClearance: 0,
    }),
  shape: "guarded",
  valid: "not above zero means that throw and rod alone fill the block",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { H: "220 mm", r: "47 mm", l: "144.5 mm", e: "-0.5 mm" }, expect: "28.501 mm" }],
});
