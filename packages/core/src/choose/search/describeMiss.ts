import { formatInterval, formatNumber } from "../../units/formatNumber.ts";
import type { NearestMissed } from "./SearchResult.ts";

const words: Readonly<Record<string, string>> = {
  greaterThan: "more than",
  greaterThanInclusive: "at least",
  lessThan: "less than",
  lessThanInclusive: "at most",
  equal: "",
  in: "one of",
  notEqual: "not",
  notIn: "none of",
};

/** By how little a rule was missed, with which parts, and what would have saved it, in one sentence. */
export function describeMiss(nearest: NearestMissed): string {
  const { parts, label, operator, unit = "1", decimals, value, against, wanted: aim, short } = nearest;
  const style = decimals === undefined ? {} : { decimals };
  const greater = operator.startsWith("greater");
  // Where no part of the lists has a say, it is the build itself that misses.
  const ids = parts.length === 0 ? "the build itself" : parts.map(({ id }) => id).join(", ");
  const print = (si: number) => formatNumber(si, unit, style);
  const has =
    value === undefined
      ? "is not known"
      : typeof value === "string"
        ? `is ${value}`
        : `${value.low === value.high ? "is" : "is at best"} ${print(greater ? value.high : value.low)}`;
  const wanted =
    against === undefined
      ? ""
      : Array.isArray(against)
        ? against.join(", ")
        : print(greater ? against.low : against.high);
  const saved =
    short === undefined
      ? ""
      : `; ${formatInterval(Math.abs(short), unit, { digits: 3 })} ${greater ? "more" : "less"} would have saved it`;
  const asked = aim ?? `${words[operator] ?? operator} ${wanted}`.trim();
  return `${ids}: ${label.charAt(0).toLowerCase()}${label.slice(1)} ${has}, ${asked} is wanted${saved}.`;
}
