import type { TableRow } from "./FieldValue.ts";

/** The number in a column of a row, in SI. @throws RangeError where the column holds none: a slip in a declaration. */
export function cellNumber(row: TableRow, column: string): number {
  const cell = row[column];
  if (typeof cell !== "number") throw new RangeError(`no number in the column ${column}`);
  return cell;
}
