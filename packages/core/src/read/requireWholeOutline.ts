import { DimensionError } from "../units/parseDimension.ts";
import { cellNumber } from "./cellNumber.ts";
import type { TableRow } from "./FieldValue.ts";

/**
 * Refuses an outline that is only a piece: what is left out could strike the cylinder unseen. It must begin on the
 * rod's axis at the cap, and reach at least as far towards the pin as it is wide, past cap bolts and shoulder.
 * @throws DimensionError saying what is missing.
 */
export function requireWholeOutline(rows: readonly TableRow[]): void {
  const points = rows.map((row) => ({ along: cellNumber(row, "along"), across: cellNumber(row, "across") }));
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return;
  if (first.along >= 0 || first.across !== 0) {
    throw new DimensionError(
      "an outline that does not begin at the middle of the cap",
      "a first point such as { along: 33 mm towards cap, across: 0 mm }",
    );
  }
  if (last.along < Math.max(...points.map(({ across }) => across))) {
    throw new DimensionError(
      "an outline that ends before the beam of the rod",
      "points on to the beam, at least as far towards the pin as the big end is wide to one side",
    );
  }
}
