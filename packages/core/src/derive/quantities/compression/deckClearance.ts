import { deckClearance as clearanceOf } from "@trialfit/mechanics";
import { stepTo } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";

export const deckClearance = quantity({
  id: "deckClearance",
  name: "Deck clearance",
  symbol: "h_d",
  unit: "mm",
  decimals: 3,
  system: "compression",
  meaning:
    "How far the flat of the crown stands below the deck at top dead centre; negative when it stands above the deck.",
  inputs: {
    H: "block.deckHeight",
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    h_c: "piston.compressionHeight",
  },
  formula: "H - (sqrt((l + r)^2 - e^2) + h_c)",
  compute: ({ H, r, l, e, h_c }) =>
    clearanceOf({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      deckHeight: H,
      compressionHeight: h_c,
    }),
  shape: "guarded",
  hot: stepTo("squish gap"),
  valid: "cold, without bearing play; the crown’s flat, not a dome",
  sources: [{ id: "plane-geometry" }],
  examples: [
    { given: { H: "220 mm", r: "47 mm", l: "144.5 mm", e: "-0.5 mm", h_c: "28.4 mm" }, expect: "0.101 mm" },
  ],
});
