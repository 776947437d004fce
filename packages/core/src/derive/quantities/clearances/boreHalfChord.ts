import { boreHalfChord as chordOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const boreHalfChord = quantity({
  id: "boreHalfChord",
  name: "Half chord of the bore at the rod's side",
  symbol: "a_z",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Distance across the crankshaft from the middle of the bore to its wall, where the side face of the rod passes. It is less than half the bore: the round wall is nearest to the rod at its side, not at its middle.",
  inputs: { B: "block.bore", w: "connectingRod.bigEndWidth", z_0: "connectingRod.planeOffset" },
  formula: "sqrt((B / 2)^2 - (z_0 + w / 2)^2)",
  compute: ({ B, w, z_0 }) => chordOf({ bore: B, bigEndWidth: w, planeOffset: z_0 }),
  shape: "monotone",
  valid: "a rod narrower than the bore",
  sources: [{ id: "plane-geometry" }],
  display: true,
  examples: [{ given: { B: "86.5 mm", w: "21.8 mm", z_0: "0.3 mm" }, expect: "41.77 mm" }],
});
