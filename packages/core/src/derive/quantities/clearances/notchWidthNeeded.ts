import { notchWidthNeeded as widthOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

/** Room on each side of the rod [m]. Source: common practice. */
const SIDE_GAP = 0.001;

export const notchWidthNeeded = quantity({
  id: "notchWidthNeeded",
  name: "Notch width needed",
  symbol: "W_nn",
  unit: "mm",
  decimals: 1,
  system: "clearances",
  meaning:
    "Width along the crankshaft that a notch needs so that the big end passes between its ends: the rod, and on both sides 1 mm of room (common practice), the rod’s side clearance and the corner radius that the cutter leaves.",
  inputs: {
    w: "connectingRod.bigEndWidth",
    C_sd: "rodSideClearance",
    z_0: "connectingRod.planeOffset",
    r_n: "block.notchCornerRadius",
  },
  formula: "w + 2 * (0.001 + C_sd + z_0 + r_n)",
  // The offset may lie to either side, as the float does, so both ends of the notch get it.
  compute: ({ w, C_sd, z_0, r_n }) =>
    widthOf({ rodWidth: w, sideGap: SIDE_GAP, axialFloat: C_sd + z_0, cornerRadius: r_n }),
  shape: "monotone",
  valid: "crankshaft end play is left out: add it; a notch centred on the cylinder axis",
  sources: [{ id: "plane-geometry" }, { id: "common-practice" }],
  examples: [{ given: { w: "21.8 mm", C_sd: "0.4 mm", z_0: "0.3 mm", r_n: "3 mm" }, expect: "31.2 mm" }],
});
