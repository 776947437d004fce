import { InputError } from "../../read/Problem.ts";
import { parseSource } from "../../read/parseSource.ts";
import { DimensionError } from "../../units/parseDimension.ts";
import { guardCell } from "./guardCell.ts";
import type { Flaw, RawCell, RawList, RawRow } from "./RawList.ts";
import type { ListHead } from "./readListHead.ts";
import { withUnit } from "./withUnit.ts";

/** One row that is being read. */
export interface RowReader {
  readonly list: RawList;
  readonly head: ListHead;
  readonly row: RawRow;
  readonly flaws: Flaw[];
  /** In what the prices of all rows are: from the head of the column, or as the cells say. */
  readonly money: { currency: string | undefined };
}

/** As much of a cell as a message shows. */
const SHOWN = 60;

/** What stands in a cell, for messages. */
export function shown({ value }: RawCell): string {
  return typeof value === "object"
    ? JSON.stringify(value).slice(0, SHOWN)
    : `"${String(value).slice(0, SHOWN)}"`;
}

/** Where in the list a cell is, for messages. */
export const fieldOf = ({ row }: RowReader, name: string) => `row ${row.number}, column "${name}"`;

/** Runs a reader on a cell, if the row has it; what it refuses is a flaw of the row. */
export function attemptCell<T>(reader: RowReader, name: string, read: (cell: RawCell) => T): T | undefined {
  const cell = reader.row.cells.get(name);
  if (cell === undefined) return undefined;
  try {
    return read(cell);
  } catch (error) {
    if (!(error instanceof DimensionError)) throw error;
    const found = `${shown(cell)}: ${error.message}`;
    reader.flaws.push({ place: cell.place(), field: fieldOf(reader, name), found, expected: error.expected });
    return undefined;
  }
}

/** What stands in a cell as it would stand in a build file: with its unit, and a list or group taken apart. */
export function entryOf(reader: RowReader, name: string): unknown {
  return attemptCell(reader, name, ({ value }) => {
    if (typeof value !== "string") return value;
    const text = value.trim();
    guardCell(text);
    if (/^[[{]/.test(text)) {
      try {
        return parseSource(text, reader.list.file).data;
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        const { found, expected } = error.problems[0]!;
        throw new DimensionError(found, expected);
      }
    }
    const unit = reader.list.columns.get(name)?.unit;
    return unit === undefined ? text : withUnit(text, unit);
  });
}
