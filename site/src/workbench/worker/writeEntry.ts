import { type BuildEdit, fields, joinDimension, parseSource } from "trialfit";
import type { About, Entry, Pieces, Readings, Text, Wanted } from "../protocol.ts";
import { readingsOf } from "./readingRows.ts";
import { isNumberAlone } from "./typedWhole.ts";

const isGiven = (text: string | undefined) => text !== undefined && text.trim() !== "";

/** The short way of writing a dimension, or the longer one where there is more to say than its size. */
function withAbout(value: string, about: About): unknown {
  const more = Object.entries(about).filter(([, text]) => isGiven(text));
  return more.length === 0 ? value : { value, ...Object.fromEntries(more) };
}

/** A number alone is in the unit that stands beside its box. */
const withUnit = (text: string, unit: string): string =>
  unit !== "1" && /^[+-]?[\d./ ]+$/.test(text.trim()) ? `${text.trim()} ${unit}` : text.trim();

function sizeOf(size: Pieces | Text | undefined): string | undefined {
  if (size === undefined) return undefined;
  if (size.form === "text") return isGiven(size.text) ? size.text.trim() : undefined;
  if (!isGiven(size.number)) return undefined;
  // What is more than a number and not understood is told as it was typed, without what stands beside it.
  return isNumberAlone(size.number) ? joinDimension(size) : size.number.trim();
}

function readingsEntry({ rows, unit, beside, about }: Readings): unknown {
  const taken = rows.filter(({ reading }) => isGiven(reading));
  const value = sizeOf(beside);
  if (taken.length === 0) return value === undefined ? undefined : withAbout(value, about);
  const said = Object.entries(about).filter(([, text]) => isGiven(text));
  return {
    ...(value === undefined ? {} : { value }),
    ...Object.fromEntries(said),
    readings: readingsOf(taken.map((row) => ({ ...row, reading: withUnit(row.reading, unit) }))),
  };
}

function wantedText({ from, to, step, unit }: Wanted, path: string): string {
  const spec = fields.get(path)?.spec;
  const [least, most] = spec?.kind === "dimension" ? spec.range : ["", ""];
  const bound = (text: string, end: string) => (isGiven(text) ? withUnit(text, unit) : end);
  const between = isGiven(from) || isGiven(to) ? ` ${bound(from, least)} to ${bound(to, most)}` : "";
  return `?${between}${isGiven(step) ? ` in steps of ${withUnit(step, unit)}` : ""}`;
}

/** What an entry of the form comes to in the build file; an empty one takes the entry out. */
export function writeEntry(path: string, entry: Entry | undefined): BuildEdit {
  switch (entry?.form) {
    case undefined:
      return { path, value: undefined };
    case "pieces":
    case "text": {
      const size = sizeOf(entry);
      return { path, value: size === undefined ? undefined : withAbout(size, entry.about) };
    }
    case "readings":
      return { path, value: readingsEntry(entry) };
    case "wanted":
      return { path, value: wantedText(entry, path) };
    case "seen": {
      const { form: _, ...said } = entry;
      return { path, value: Object.values(said).some(isGiven) ? said : undefined };
    }
    case "rows": {
      const rows = entry.rows
        .map((row) => Object.fromEntries(Object.entries(row).filter(([, cell]) => isGiven(cell))))
        .filter((row) => Object.keys(row).length > 0);
      return { path, value: rows.length === 0 ? undefined : rows };
    }
    case "file":
      return { path, value: isGiven(entry.file) ? parseSource(entry.file, path).data : undefined };
  }
}
