import { rodOffsetByStagger as offsetOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodOffsetByStagger = quantity({
  id: "rodOffsetByStagger",
  name: "Small end off its cylinder by the bank stagger",
  symbol: "z_st",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "How far the small ends of two rods that share a crankpin stand off their cylinders’ axes at most, because the banks are staggered by more or less than the rods are. Rods of another width than the first ones bring it; offset beams take it away.",
  inputs: {
    s_bk: "block.bankStagger",
    L_cp: "crankshaft.crankpinLength",
    w: "connectingRod.bigEndWidth",
    z_b: "connectingRod.beamOffset",
  },
  formula: "max(abs((s_bk - w) / 2 - z_b), abs((s_bk - (L_cp - w)) / 2 - z_b))",
  compute: ({ s_bk, L_cp, w, z_b }) =>
    offsetOf({ bankStagger: s_bk, crankpinLength: L_cp, rodWidth: w, beamOffset: z_b }),
  shape: "guarded",
  valid: "two rods side by side on one crankpin, that pin in the middle between its cylinders",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { s_bk: "24 mm", L_cp: "48.1 mm", w: "23.85 mm", z_b: "0 mm" }, expect: "0.13 mm" }],
  display: true,
});
