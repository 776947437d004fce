import { buildOutline, type RodToCylinder } from "@trialfit/mechanics";
import type { OutlineVertex } from "../read/FieldValue.ts";

/** What every sweep of the rod against its cylinder needs: input name → where it comes from. */
export const rodSweepInputs = {
  r: "throwRadius",
  l: "connectingRod.length",
  e: "pinLineOffset",
  B: "block.bore",
  e_c: "block.cylinderAxisOffset",
  y_b: "block.cylinderBottomHeight",
  w: "connectingRod.bigEndWidth",
  z_0: "connectingRod.planeOffset",
} as const;

/** The rod and its cylinder as mechanics takes them, without a notch. Lengths in metres. */
export function rodSweep(
  numbers: Readonly<Record<keyof typeof rodSweepInputs, number>>,
  outline: readonly OutlineVertex[],
): RodToCylinder {
  const { r, l, e, B, e_c, y_b, w, z_0 } = numbers;
  return {
    crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
    outline: buildOutline(outline.map(({ along, across, ...radii }) => ({ u: along, v: across, ...radii }))),
    bore: B,
    cylinderAxisOffset: e_c,
    cylinderBottomHeight: y_b,
    bigEndWidth: w,
    planeOffset: z_0,
  };
}
