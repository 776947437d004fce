import { nearestPistons, pistonPairExample, pistonPairInputs } from "../../clearances/pistonPair.ts";
import { ABOUT_THE_CRANKSHAFT } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";

export const pistonToPiston = quantity({
  id: "pistonToPiston",
  name: "Piston to piston across the V",
  symbol: "c_pp",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Least distance between the skirts of the two pistons that share a crankpin, near the bottom of their travel; negative when they strike. Long strokes in a narrow V bring them together.",
  inputs: pistonPairInputs,
  method:
    "The innermost points of both skirts’ lower ends are followed over a turn: how far they stand from the middle plane of the block, added up, and the stagger of the banks with it.",
  compute: (n) => nearestPistons(n).clearance,
  shape: "guarded",
  hot: ABOUT_THE_CRANKSHAFT,
  valid: "two cylinders on one crankpin, round skirts to their lower end; never more than the true distance",
  sources: [{ id: "plane-geometry" }],
  examples: [
    { given: pistonPairExample, expect: "36.45 mm" },
    { given: { ...pistonPairExample, s_bk: "22 mm" }, expect: "37.78 mm" },
  ],
  display: true,
});
