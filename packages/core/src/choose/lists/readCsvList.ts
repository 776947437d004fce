import { InputError } from "../../read/Problem.ts";
import { csvRecords, type Line } from "./csvRecords.ts";
import { type Flaw, listLimits, type Place, type RawCell, type RawList, type RawRow } from "./RawList.ts";

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
  const flaws: Flaw[] = [];
  const [heads, ...records] = csvRecords(lines.slice(top).join(""), delimiter, top + 1, flaws);
  if (heads === undefined && flaws[0] !== undefined)
    return refuse(file, flaws[0].place, flaws[0].found, flaws[0].expected);
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
    .flatMap((line, index): readonly RawRow[] => {
      const { record } = line;
      if (record.length !== names.length) {
        const isLonger = record.length > names.length;
        flaws.push({
          place: placeIn(line, Math.min(names.length, record.length))(),
          field: `row ${index + 1}`,
          found: `${record.length} ${record.length === 1 ? "cell" : "cells"}`,
          expected: `${names.length}, as many as there are column heads: ${isLonger ? "quotes around a cell with a separator in it" : "an empty cell where nothing is known"}`,
        });
        return [];
      }
      const cells = new Map<string, RawCell>();
      for (const [at, value] of record.entries())
        if (value !== "") cells.set(names[at]!, { value, place: placeIn(line, at) });
      return [{ number: index + 1, place: placeIn(line, 0), cells }];
    });
  return { file, head, columns, rows, flaws };
}
