import { DimensionError } from "../units/parseDimension.ts";
import { cellNumber } from "./cellNumber.ts";
import type { TableRow } from "./FieldValue.ts";

/** Refuses a curve over speed that turns back or gives one speed twice. @throws DimensionError naming the row */
export function requireAscendingSpeeds(rows: readonly TableRow[]): void {
  const wrong = rows.findIndex(
    (row, index) => index > 0 && cellNumber(row, "speed") <= cellNumber(rows[index - 1]!, "speed"),
  );
  if (wrong >= 0)
    throw new DimensionError(
      `row ${wrong + 1} is at no higher speed than row ${wrong}`,
      "rows in order of speed, each speed once",
    );
}
