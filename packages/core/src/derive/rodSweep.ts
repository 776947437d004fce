import {
  buildOutline,
  type OutlineVertex,
  type RodNearest,
  type RodOutline,
  type RodToCylinder,
  rodToCylinderBottom,
} from "@trialfit/mechanics";
import { cellNumber } from "../read/cellNumber.ts";
import type { TableRow } from "../read/FieldValue.ts";
import { rememberNumbers } from "./rememberNumbers.ts";

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

const outlines = new WeakMap<readonly TableRow[], RodOutline>();

/** The closed outline of a table of points, built once for each table. */
export function rodOutline(rows: readonly TableRow[]): RodOutline {
  let outline = outlines.get(rows);
  if (outline === undefined) {
    outline = buildOutline(outlineVertices(rows));
    outlines.set(rows, outline);
  }
  return outline;
}

type RodNumbers = Readonly<Record<keyof typeof rodSweepInputs, number>>;

/** The rod and its cylinder as mechanics takes them, without a notch. Lengths in metres. */
export function rodSweep(numbers: RodNumbers, outline: readonly TableRow[]): RodToCylinder {
  const { r, l, e, B, e_c, y_b, w, z_0 } = numbers;
  return {
    crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
    outline: rodOutline(outline),
    bore: B,
    cylinderAxisOffset: e_c,
    cylinderBottomHeight: y_b,
    bigEndWidth: w,
    planeOffset: z_0,
  };
}

/** The notch for the rod in the bottom of the cylinder: input name → where it comes from. */
export const notchInputs = {
  p_n: "block.notchDepth",
  q_n: "block.notchHeight",
  W_n: "block.notchWidth",
  r_n: "block.notchCornerRadius",
} as const;

type NotchNumbers = RodNumbers & Readonly<Record<keyof typeof notchInputs, number>>;

/** Nearest approaches kept for an outline: the points that several quantities, or the other ends of an input, share. */
const MOST_KEPT = 1024;
const names = Object.keys({ ...rodSweepInputs, ...notchInputs }) as readonly (keyof NotchNumbers)[];

const nearestBy = new WeakMap<readonly TableRow[], (numbers: NotchNumbers) => RodNearest>();

/** Where the rod comes nearest to its cylinder, less the notch; the same numbers are answered from memory. */
export function nearestToCylinder(numbers: NotchNumbers, outline: readonly TableRow[]): RodNearest {
  let nearest = nearestBy.get(outline);
  if (nearest === undefined) {
    nearest = rememberNumbers(names, MOST_KEPT, ({ p_n, q_n, W_n, r_n, ...rod }) =>
      rodToCylinderBottom({
        ...rodSweep(rod, outline),
        notch: { depth: p_n, height: q_n, width: W_n, cornerRadius: r_n },
      }),
    );
    nearestBy.set(outline, nearest);
  }
  const { p_n, q_n, W_n, r_n } = numbers;
  // A notch without depth, height or width is none, whatever its other sizes.
  const none = p_n * q_n * W_n === 0 && Math.min(p_n, q_n, W_n, r_n) >= 0;
  return nearest(none ? { ...numbers, p_n: 0, q_n: 0, W_n: 0, r_n: 0 } : numbers);
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
