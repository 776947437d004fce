import { parse } from "csv-parse/browser/esm/sync";
import { InputError } from "../../read/Problem.ts";
import { listLimits, type Place, type RawCell, type RawList, type RawRow } from "./RawList.ts";

interface Line {
  readonly record: readonly string[];
  readonly raw: string;
  readonly line: number;
}

const HEAD_LINE = /^#\s*([A-Za-z-]+)\s*:\s*(.*?)\s*$/;
const COLUMN = /^(.*?)\s*(?:\(([^()]*(?:\([^()]*\))?[^()]*)\)|\[([^[\]]*)\])?$/;

/** Where a cell of a record begins in its first line, counted from 1. */
function columnOf(raw: string, index: number, delimiter: string): number {
  let cell = 0;
  let quoted = false;
  for (let at = 0; at < raw.length && cell < index; at += 1) {
    if (raw[at] === '"') quoted = !quoted;
    else if (raw[at] === delimiter && !quoted) {
      cell += 1;
      if (cell === index) return at + 2;
    }
  }
  return 1;
}

function refuse(file: string, place: Place, found: string, expected: string, field = ""): never {
  throw new InputError([{ file, ...place, field, found, expected }]);
}

/** The separator of a list: of comma, semicolon and tab the one that its line of column heads has most of. */
function delimiterOf(line: string): string {
  const count = (sign: string) => line.split(sign).length;
  return [",", ";", "\t"].reduce((best, sign) => (count(sign) > count(best) ? sign : best));
}

/** Splits records, each with the line on which it begins. */
function recordsOf(text: string, delimiter: string, firstLine: number, file: string): readonly Line[] {
  try {
    const records = parse(text, {
      delimiter,
      info: true,
      raw: true,
      relax_column_count: true,
      trim: true,
      max_record_size: listLimits.cell * 4,
    }) as unknown as readonly { record: string[]; raw: string }[];
    let line = firstLine;
    return records.map(({ record, raw }) => {
      const at = line;
      line += raw.split("\n").length - (raw.endsWith("\n") ? 1 : 0);
      return { record, raw, line: at };
    });
  } catch (error) {
    const { code, lines, message } = error as Error & { readonly code?: string; readonly lines?: number };
    if (code === undefined) throw error;
    const line = firstLine + Math.max(0, (lines ?? 1) - 1);
    return refuse(
      file,
      { line, column: 1 },
      code === "CSV_MAX_RECORD_SIZE" ? "a row that does not end" : `a row that is not CSV (${message})`,
      "cells as RFC 4180 has them: quotes around a cell with a separator, doubled inside it",
    );
  }
}

/**
 * Splits a CSV list into cells: lines `# key: value` at its top, a row of column heads with units in brackets, a row
 * for each part. The separator is a comma, a semicolon or a tab. Format of cells: RFC 4180.
 * @throws InputError with file, line, column
 */
export function readCsvList(text: string, file: string): RawList {
  const lines = text.replace(/^\uFEFF/, "").split(/(?<=\n)/);
  const head = new Map<string, RawCell>();
  let top = 0;
  for (; top < lines.length && (lines[top]!.startsWith("#") || lines[top]!.trim() === ""); top += 1) {
    const [, key, value] = HEAD_LINE.exec(lines[top]!.trim()) ?? [];
    const line = top + 1;
    if (key === undefined || value === undefined) continue;
    if (head.has(key)) refuse(file, { line, column: 1 }, `"${key}" a second time`, "each key once", key);
    head.set(key, { value, place: () => ({ line, column: 1 }) });
  }
  const delimiter = delimiterOf(lines[top] ?? "");
  const [heads, ...records] = recordsOf(lines.slice(top).join(""), delimiter, top + 1, file);
  if (heads === undefined)
    return refuse(
      file,
      { line: top + 1, column: 1 },
      "no row of column heads",
      "id, and the fields of the part",
    );
  const placeIn = (line: Line, index: number) => () => ({
    line: line.line,
    column: columnOf(line.raw, index, delimiter),
  });
  if (heads.record.length > listLimits.columns)
    refuse(file, placeIn(heads, 0)(), `${heads.record.length} columns`, `at most ${listLimits.columns}`);
  const names: string[] = [];
  const columns = new Map<string, { unit: string | undefined; place: () => Place }>();
  for (const [index, title] of heads.record.entries()) {
    const [, name = "", round, square] = COLUMN.exec(title) ?? [];
    const place = placeIn(heads, index);
    if (name === "") refuse(file, place(), "a column without a name", "the name of a field");
    if (columns.has(name))
      refuse(file, place(), `the column "${name}" a second time`, "each column once", name);
    names.push(name);
    columns.set(name, { unit: (round ?? square)?.trim(), place });
  }
  const rows = records
    .filter(({ record }) => record.some((cell) => cell !== ""))
    .map((line, index): RawRow => {
      const { record } = line;
      if (record.length > names.length)
        refuse(
          file,
          placeIn(line, names.length)(),
          `${record.length} cells`,
          `${names.length}, as many as there are column heads: quotes around a cell with a separator in it`,
          `row ${index + 1}`,
        );
      const cells = new Map<string, RawCell>();
      for (const [at, value] of record.entries())
        if (value !== "") cells.set(names[at]!, { value, place: placeIn(line, at) });
      return { number: index + 1, place: placeIn(line, 0), cells };
    });
  return { file, head, columns, rows };
}
