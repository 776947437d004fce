import { parse } from "csv-parse/browser/esm/sync";
import { type Flaw, listLimits } from "./RawList.ts";

/** A record of a CSV text. */
export interface Line {
  readonly record: readonly string[];
  readonly raw: string;
  /** On which it begins. */
  readonly line: number;
}

/** Where a quote is opened that nothing closes: an index into the text, or −1. */
function openQuote(text: string): number {
  let open = -1;
  for (let at = text.indexOf('"'); at >= 0; at = text.indexOf('"', at + 1)) open = open < 0 ? at : -1;
  return open;
}

function parsed(text: string, delimiter: string, firstLine: number): readonly Line[] {
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
}

/**
 * Splits a text into records. Where it is no CSV the records before that place are read, and the place is a flaw.
 * @param firstLine number of the first line in its file
 * @param flaws what is wrong is added to it
 */
export function csvRecords(
  text: string,
  delimiter: string,
  firstLine: number,
  flaws: Flaw[],
): readonly Line[] {
  try {
    return parsed(text, delimiter, firstLine);
  } catch (error) {
    const { code, lines, message } = error as Error & { readonly code?: string; readonly lines?: number };
    if (code === undefined) throw error;
    const open = openQuote(text);
    const before = open < 0 ? Math.max(0, (lines ?? 1) - 1) : text.slice(0, open).split("\n").length - 1;
    const begins = open < 0 ? undefined : open - text.lastIndexOf("\n", open);
    flaws.push({
      place: { line: firstLine + before, column: begins ?? 1 },
      field: "",
      found:
        open >= 0
          ? "a quote that nothing closes"
          : code === "CSV_MAX_RECORD_SIZE"
            ? "a row that does not end"
            : `a row that is not CSV (${message})`,
      expected: "cells as RFC 4180 has them: quotes around a cell with a separator, doubled inside it",
    });
    const sound = text
      .split(/(?<=\n)/)
      .slice(0, before)
      .join("");
    return tryParsed(sound, delimiter, firstLine);
  }
}

/** The records of the part before a flaw; none where that part is broken as well. */
function tryParsed(text: string, delimiter: string, firstLine: number): readonly Line[] {
  try {
    return parsed(text, delimiter, firstLine);
  } catch {
    return [];
  }
}
