import { cellNumber } from "../read/cellNumber.ts";
import type { TableRow } from "../read/FieldValue.ts";

/** Positions of the cylinders along the crankshaft from the middle between the outermost two [m]. */
export function fromMiddle(throws: readonly TableRow[]): readonly number[] {
  const positions = throws.map((row) => cellNumber(row, "position"));
  const middle = (Math.min(...positions) + Math.max(...positions)) / 2;
  return positions.map((one) => one - middle);
}
