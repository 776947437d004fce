import { type DimensionValue, formatNumber } from "trialfit";
import type { Entry } from "../live/Entry.ts";

const MAGNITUDE = /^\s*([+-]?\d[\d./ ]*(?:e[+-]?\d+)?)/i;

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
  const { text } = value;
  const tolerance =
    value.toleranceFrom === "stated" ? (/±\s*(.+)$|\s(\+.*)$/.exec(text)?.slice(1).join("") ?? "") : "";
  const written = value.positions === undefined ? MAGNITUDE.exec(text)?.[1]?.trim() : undefined;
  return {
    value: written ?? formatNumber(value.nominal, value.unit, { digits: 7 }).replace(/ .*/, ""),
    tolerance,
    unit: value.unit,
    word: words.find((word) => text.includes(word)) ?? "",
  };
}
