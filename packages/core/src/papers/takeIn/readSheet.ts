import { parse } from "csv-parse/browser/esm/sync";
import { nearestWord } from "../../read/nearestWord.ts";
import { InputError } from "../../read/Problem.ts";
import { type SheetColumn, type SheetRow, sheetColumns } from "../print/sheetRows.ts";

/** One row of a filled sheet that has a reading, with the line on which it stands. */
export interface FilledRow {
  readonly line: number;
  readonly row: SheetRow;
}

/** Longest sheet that is read: a few readings of everything in twelve cylinders fit many times over. */
const MOST_CHARACTERS = 2_000_000;

const isColumn = (name: string): name is SheetColumn => (sheetColumns as readonly string[]).includes(name);

function refuse(
  file: string,
  line: number,
  field: string,
  found: string,
  expected: string,
  near?: string,
): never {
  throw new InputError([
    { file, line, column: 1, field, found, expected, ...(near === undefined ? {} : { didYouMean: near }) },
  ]);
}

/** Spreadsheets of some countries write a semicolon between cells. */
const delimiterOf = (text: string) => {
  const head = text.slice(0, text.search(/[\r\n]|$/));
  return [",", ";", "\t"].reduce((best, sign) =>
    head.split(sign).length > head.split(best).length ? sign : best,
  );
};

function headOf(names: readonly string[], file: string): readonly SheetColumn[] {
  const found = names.map((name) => {
    const plain = name.trim().toLowerCase();
    if (isColumn(plain)) return plain;
    return refuse(
      file,
      1,
      name,
      `a column "${name}"`,
      `columns ${sheetColumns.join(", ")}`,
      nearestWord(plain, sheetColumns),
    );
  });
  for (const needed of ["entry", "unit", "reading"] as const)
    if (!found.includes(needed))
      refuse(file, 1, needed, `no column "${needed}"`, "the columns of a measurement sheet");
  return found;
}

/** Takes off the sign that keeps a spreadsheet from reading a formula. */
const plain = (cell: string) => cell.replace(/^'(?=[=+\-@])/, "").trim();

/**
 * Reads a filled measurement sheet: a table file (RFC 4180) with the columns of the blank one, in any order.
 * @returns the rows that have a reading; the others are still to be measured
 * @throws InputError with file and line
 */
export function readSheet(text: string, file: string): readonly FilledRow[] {
  if (text.length > MOST_CHARACTERS)
    refuse(file, 1, "", `${text.length} characters`, `at most ${MOST_CHARACTERS}`);
  let records: readonly { readonly record: readonly string[]; readonly info: { readonly lines: number } }[];
  try {
    records = parse(text.replace(/^\uFEFF/, ""), {
      delimiter: delimiterOf(text),
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
    }) as unknown as typeof records;
  } catch (error) {
    const { code, lines, message } = error as Error & { readonly code?: string; readonly lines?: number };
    if (code === undefined) throw error;
    return refuse(file, lines ?? 1, "", `a row that is not CSV (${message})`, "cells as RFC 4180 has them");
  }
  const [head, ...rows] = records;
  if (head === undefined) return refuse(file, 1, "", "nothing", "a measurement sheet");
  const columns = headOf(head.record, file);
  const blank = Object.fromEntries(sheetColumns.map((column) => [column, ""])) as Record<SheetColumn, string>;
  return rows.flatMap(({ record, info }): readonly FilledRow[] => {
    if (record.length > columns.length && record.slice(columns.length).some((cell) => cell.trim() !== ""))
      refuse(file, info.lines, "", `${record.length} cells`, `${columns.length}; a decimal sign is a point`);
    const row = { ...blank };
    for (const [index, column] of columns.entries()) row[column] = plain(record[index] ?? "");
    return row.reading === "" ? [] : [{ line: info.lines, row }];
  });
}
