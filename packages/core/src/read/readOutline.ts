import { DimensionError, parseDimension } from "../units/parseDimension.ts";
import type { OutlineVertex } from "./FieldValue.ts";

/** One vertex as it is written: `along: 24 mm towards cap`, `across: 37.5 mm`. */
export interface OutlineEntry {
  readonly along: string;
  readonly across: string;
  readonly cornerRadius?: string | undefined;
  readonly arcRadius?: string | undefined;
}

/** Farther than this from the big-end centre no big end reaches: a slip of the pen or of the unit. */
const FARTHEST = 0.4;

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
  if (nominal > FARTHEST)
    throw new DimensionError(`${field}: ${text}`, "at most 400 mm from the big-end centre");
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

/**
 * Refuses an outline that is only a piece: what is left out could strike the cylinder unseen. It must begin on the
 * rod's axis at the cap, and reach at least as far towards the pin as it is wide, past cap bolts and shoulder.
 * @throws DimensionError saying what is missing.
 */
export function requireWholeOutline(vertices: readonly OutlineVertex[]): void {
  const [first, last] = [vertices[0], vertices.at(-1)];
  if (first === undefined || last === undefined) return;
  if (first.along >= 0 || first.across !== 0) {
    throw new DimensionError(
      "an outline that does not begin at the middle of the cap",
      "a first point such as { along: 33 mm towards cap, across: 0 mm }",
    );
  }
  const widest = Math.max(...vertices.map((vertex) => vertex.across));
  if (last.along < widest) {
    throw new DimensionError(
      "an outline that ends before the beam of the rod",
      "points on to the beam, at least as far towards the pin as the big end is wide to one side",
    );
  }
}
