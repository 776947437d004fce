import type { TorqueCurve } from "@trialfit/mechanics";
import { cellNumber } from "../read/cellNumber.ts";
import type { TableRow } from "../read/FieldValue.ts";

/** The table that the quantities of the torque curve read. */
export const curveTables = { curve: "targets.torqueCurve" } as const;

/** The curve as mechanics takes it. */
export const torqueCurve = ({ curve }: { readonly curve: readonly TableRow[] }): TorqueCurve =>
  curve.map((row) => ({ angularSpeed: cellNumber(row, "speed"), torque: cellNumber(row, "torque") }));

/** An invented curve, for examples. */
export const curveExample =
  "3000 rpm, 480 N m; 4500 rpm, 560 N m; 5500 rpm, 600 N m; 6500 rpm, 590 N m; 7400 rpm, 568 N m; 8000 rpm, 510 N m";

/** Torque that falls straight from 400 N m at standstill to nothing at 8000 rpm: power is highest at half of that. */
export const straightExample = "1000 rpm, 350 N m; 3000 rpm, 250 N m; 7000 rpm, 50 N m";

/** What holds of every value read off the curve. */
export const curveValid =
  "within the curve as entered: a peak between two rows or beyond the last one is not seen";
