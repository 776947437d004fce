import { outlineFarthestPoint, screeningDisc } from "@trialfit/mechanics";
import { ABOUT_THE_CRANKSHAFT } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";
import { rodOutline, rodSweepExample } from "../../rodSweep.ts";

/** Share of the rod’s length, from the crankpin up, that is still big end and not beam. Source: common practice. */
const BIG_END_SHARE = 0.2;

const { r, l, B, e_c, y_b, w, z_0, outline } = rodSweepExample;

export const bigEndDiscClearance = quantity({
  id: "bigEndDiscClearance",
  name: "Disc of the big end to cylinder bottom",
  symbol: "c_bd",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Distance from the lower end of the cylinder to the disc about the crankshaft that the big end never leaves. Positive proves the big end clear with a ruler alone; negative says only that the sweep has to tell.",
  inputs: {
    r: "throwRadius",
    l: "connectingRod.length",
    B: "block.bore",
    e_c: "block.cylinderAxisOffset",
    y_b: "block.cylinderBottomHeight",
    w: "connectingRod.bigEndWidth",
    z_0: "connectingRod.planeOffset",
  },
  tables: { outline: "connectingRod.bigEndOutline" },
  method:
    "Throw and farthest point of the big end’s outline, added up, are the radius of the disc; its distance to the lower edge of the bore at the rod’s side face, or to the wall where that is nearer.",
  compute: (n, _words, tables) =>
    screeningDisc({
      throwRadius: n.r,
      bigEndRadius: outlineFarthestPoint(rodOutline(tables.outline), BIG_END_SHARE * n.l).radius,
      bore: n.B,
      cylinderAxisOffset: n.e_c,
      cylinderBottomHeight: n.y_b,
      bigEndWidth: n.w,
      planeOffset: n.z_0,
    }),
  shape: "guarded",
  hot: ABOUT_THE_CRANKSHAFT,
  valid: "the big end, not the beam; a notch is left out",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r, l, B, e_c, y_b, w, z_0, outline }, expect: "-9.14 mm" }],
  display: true,
});
