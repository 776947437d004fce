import { buildOutline, type OutlineVertex, type RodToCylinder } from "@trialfit/mechanics";
import { cellNumber } from "../read/cellNumber.ts";
import type { TableRow } from "../read/FieldValue.ts";

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

/** The rows of an outline as mechanics takes them. */
export function outlineVertices(rows: readonly TableRow[]): readonly OutlineVertex[] {
  const radius = (row: TableRow, column: "cornerRadius" | "arcRadius") =>
    row[column] === undefined ? {} : { [column]: cellNumber(row, column) };
  return rows.map((row) => ({
    u: cellNumber(row, "along"),
    v: cellNumber(row, "across"),
    ...radius(row, "cornerRadius"),
    ...radius(row, "arcRadius"),
  }));
}

/** The rod and its cylinder as mechanics takes them, without a notch. Lengths in metres. */
export function rodSweep(
  numbers: Readonly<Record<keyof typeof rodSweepInputs, number>>,
  outline: readonly TableRow[],
): RodToCylinder {
  const { r, l, e, B, e_c, y_b, w, z_0 } = numbers;
  return {
    crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
    outline: buildOutline(outlineVertices(outline)),
    bore: B,
    cylinderAxisOffset: e_c,
    cylinderBottomHeight: y_b,
    bigEndWidth: w,
    planeOffset: z_0,
  };
}

/** An invented rod, crank drive and block, as text, for examples of the quantities that sweep a rod. */
export const rodSweepExample = {
  r: "47 mm",
  l: "144.5 mm",
  e: "-0.5 mm",
  B: "86.5 mm",
  e_c: "0 mm",
  y_b: "71 mm",
  w: "21.8 mm",
  z_0: "0.3 mm",
  outline:
    "33 mm towards cap, 0 mm; 33 mm towards cap, 14 mm; 28.5 mm towards cap, 23.5 mm; 24 mm towards cap, 26 mm; 24 mm towards cap, 37.5 mm; 8 mm towards cap, 38.5 mm; 9 mm towards pin, 38.5 mm; 17 mm towards pin, 33.5 mm; 30 mm towards pin, 15.5 mm; 60 mm towards pin, 10.5 mm",
} as const;
