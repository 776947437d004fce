import { type DimensionValue, formatNumber, splitDimension } from "trialfit";
import type { Entry } from "../live/Entry.ts";

/**
 * A dimension of a build in the pieces of its entry, as the build writes it.
 * @param words those that the field may carry
 * @param unit taken where the build says nothing
 */
export function entryOf(
  value: DimensionValue | undefined,
  words: readonly string[],
  unit: string,
): Record<keyof Entry, string> {
  if (value === undefined) return { value: "", tolerance: "", unit, word: "" };
  const pieces = value.positions === undefined ? splitDimension(value.text, { unit, words }) : undefined;
  return {
    value: pieces?.number ?? formatNumber(value.nominal, value.unit, { digits: 7 }).replace(/ .*/, ""),
    tolerance: value.toleranceFrom === "stated" ? (pieces?.tolerance ?? "") : "",
    unit: value.unit,
    word: pieces?.word ?? "",
  };
}
