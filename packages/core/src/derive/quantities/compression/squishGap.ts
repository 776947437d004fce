import { squishGap as gapOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const squishGap = quantity({
  id: "squishGap",
  name: "Squish gap",
  symbol: "q",
  unit: "mm",
  decimals: 3,
  system: "compression",
  meaning:
    "Distance between the crown’s flat and the flat of the head at top dead centre, cold and at rest: deck clearance plus compressed gasket. At speed the rod stretches, the piston rocks and the bearings give, which takes several tenths of a millimetre off it.",
  inputs: { h_d: "deckClearance", t_g: "headGasket.compressedThickness" },
  formula: "h_d + t_g",
  compute: ({ h_d, t_g }) => gapOf({ deckClearance: h_d, gasketThickness: t_g }),
  shape: "guarded",
  hot: { quantity: "runningSquishGap" },
  valid: "flat crown under a flat head face",
  sources: [{ id: "definition" }],
  examples: [{ given: { h_d: "0.10065 mm", t_g: "1 mm" }, expect: "1.101 mm" }],
});
