import type { Judged, PlaceVerdict } from "./Judged.ts";
import type { Verdict, VerdictWord } from "./Verdict.ts";

/** Verdicts of places, the one first that stands for all. */
export const worstFirst: readonly VerdictWord[] = ["fails", "unknown", "open", "holds", "not-applicable"];

/** Of what one rule says at each place the word that stands for it; not applicable where there is no place. */
export function worstWord(words: readonly VerdictWord[]): VerdictWord {
  return worstFirst.find((word) => words.includes(word)) ?? "not-applicable";
}

const required = (verdict: Verdict) => verdict.comparisons.filter((one) => one.in === "requires");

/** The least that is to spare at a place; places of one rule are compared, so units agree. */
function marginOf(verdict: Verdict): number {
  return Math.min(Infinity, ...required(verdict).flatMap(({ margin }) => (margin ? [margin.low] : [])));
}

function worse(a: Judged, b: Judged): number {
  return (
    worstFirst.indexOf(a.verdict.verdict) - worstFirst.indexOf(b.verdict.verdict) ||
    marginOf(a.verdict) - marginOf(b.verdict) ||
    0
  );
}

function placeVerdict({ verdict, at }: Judged): PlaceVerdict {
  const value = required(verdict).map((one) => one.value)[0];
  return {
    at: at ?? "",
    verdict: verdict.verdict,
    nominally: verdict.nominally,
    ...(typeof value === "object" ? { value } : {}),
  };
}

/**
 * Of what one rule says at each place the worst, which stands for the rule, with all of them.
 * @returns undefined where there is no place
 */
export function worstPlace(places: readonly Judged[]): Judged | undefined {
  const worst = [...places].sort(worse)[0];
  return worst === undefined ? undefined : { ...worst, places: places.map(placeVerdict) };
}
