import { DimensionError } from "../units/parseDimension.ts";
import { cellNumber } from "./cellNumber.ts";
import type { TableRow } from "./FieldValue.ts";

const TURN = 2 * Math.PI;
/** Half a degree: what is farther apart is a slip, not a rounding. */
const SLACK = Math.PI / 360;

/**
 * Refuses throws that cannot be: a cylinder fires at its top dead centre, which crankpin and bank give, and all
 * of them are counted from one line.
 * @throws DimensionError naming the first cylinder that does not agree with the first.
 */
export function requireThrows(rows: readonly TableRow[]): void {
  const offsets = rows.map(
    (row) => cellNumber(row, "fires") + cellNumber(row, "pin") - cellNumber(row, "bank"),
  );
  const first = offsets[0] ?? 0;
  const wrong = offsets.findIndex((offset) => {
    const apart = (((offset - first) % TURN) + TURN) % TURN;
    return Math.min(apart, TURN - apart) > SLACK;
  });
  if (wrong >= 0)
    throw new DimensionError(
      `cylinder ${wrong + 1} does not stand at top dead centre when it fires`,
      "firing angles that agree with crankpin and bank: fires = bank − pin, give or take whole turns, counted alike for all",
    );
}
