import { splitDimension } from "trialfit";
import type { Pieces } from "../protocol.ts";
import { inUnit } from "./inUnit.ts";

/** A number alone, a fraction too. */
const NUMBER = String.raw`[+-]?(?:\d+ \d+/\d+|\d+/\d+|(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)`;
const ALONE = new RegExp(`^${NUMBER}$`, "i");
/** A number with a tolerance and no unit between them. */
const WITHOUT_UNIT = new RegExp(String.raw`^(${NUMBER})\s*([±+].*)$`, "i");

/** Whether a number box holds a number alone, or nothing. */
export const isNumberAlone = (text: string): boolean => text.trim() === "" || ALONE.test(text.trim());

/** The text of a dimension that was typed in one box; the unit beside the box where none was typed. */
function wholeText(text: string, unit: string): string {
  const [, number, tolerance] = WITHOUT_UNIT.exec(text) ?? [];
  return number === undefined || unit === "1" ? text : `${number} ${unit} ${tolerance}`;
}

/**
 * What was typed into the box of the number, where it is more than one: `3.7 in`, `95.5 ± 0.02`,
 * `95.5 mm +0.02/-0.01`, each piece where it belongs. What was not typed stays as it is; a tolerance keeps its width in
 * the new unit.
 * @returns undefined when the reader does not understand it
 */
export function typedWhole(entry: Pieces, syntax: Parameters<typeof splitDimension>[1]): Pieces | undefined {
  const typed = entry.number.trim();
  if (isNumberAlone(typed)) return entry;
  const pieces = splitDimension(wholeText(typed, entry.unit), syntax);
  if (pieces === undefined) return undefined;
  const { number, unit, tolerance, word } = pieces;
  const kept = unit === entry.unit ? entry : inUnit({ ...entry, number: "0", word: "" }, unit);
  return {
    ...entry,
    number,
    unit,
    tolerance: tolerance === "" ? kept.tolerance : tolerance,
    word: word === "" ? entry.word : word,
  };
}
