import { DimensionError } from "../units/parseDimension.ts";
import type { TableRow } from "./FieldValue.ts";

/** Refuses a torsional chain with a link missing, or one hanging loose at its end. @throws DimensionError */
export function requireStations(rows: readonly TableRow[]): void {
  const wrong = rows.findIndex((row, index) => (row.stiffness === undefined) !== (index === rows.length - 1));
  if (wrong >= 0)
    throw new DimensionError(
      `station ${wrong + 1} ${wrong === rows.length - 1 ? "has a stiffness to nowhere" : "has no stiffness to the next"}`,
      "a stiffness at every station but the last",
    );
}
