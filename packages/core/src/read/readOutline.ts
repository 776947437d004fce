import { DimensionError, parseDimension } from "../units/parseDimension.ts";
import type { OutlineVertex } from "./FieldValue.ts";

/** One vertex as it is written: `along: 24 mm towards cap`, `across: 37.5 mm`. */
export interface OutlineEntry {
  readonly along: string;
  readonly across: string;
  readonly cornerRadius?: string | undefined;
  readonly arcRadius?: string | undefined;
}

function length(field: string, text: string, words?: readonly string[]) {
  try {
    return parseDimension(text, words === undefined ? { unit: "mm" } : { unit: "mm", words });
  } catch (error) {
    if (error instanceof DimensionError)
      throw new DimensionError(`${field}: ${error.message}`, error.expected);
    throw error;
  }
}

function unsigned(field: string, text: string): number {
  const { nominal } = length(field, text);
  if (nominal < 0) throw new DimensionError(`${field}: ${text}`, "a length that is not negative");
  return nominal;
}

/**
 * Reads one vertex of the half outline of a connecting rod's big end.
 * @throws DimensionError naming the entry's field, what was found and what was expected.
 */
export function readOutline(entry: OutlineEntry): OutlineVertex {
  const along = length("along", entry.along, ["towards cap", "towards pin"]);
  if (along.nominal < 0)
    throw new DimensionError(`along: ${entry.along}`, 'a length with "towards cap" or "towards pin"');
  if (along.word === undefined && along.nominal !== 0) {
    throw new DimensionError(
      `along: ${entry.along}`,
      'the word "towards cap" or "towards pin" after the length',
    );
  }
  return {
    along: along.word === "towards cap" ? -along.nominal : along.nominal,
    across: unsigned("across", entry.across),
    ...(entry.cornerRadius === undefined
      ? {}
      : { cornerRadius: unsigned("cornerRadius", entry.cornerRadius) }),
    ...(entry.arcRadius === undefined ? {} : { arcRadius: unsigned("arcRadius", entry.arcRadius) }),
  };
}
