import type { ReportVerdict } from "./Report.ts";

/** Places of one kind together: `cylinder 1, 2 and 5`. */
function namePlaces(places: readonly string[]): string {
  const [kind] = places.map((place) => place.replace(/\d+$/, ""));
  const numbers = places.map((place) => place.slice((kind ?? "").length));
  const last = numbers.pop() ?? "";
  return `${kind}${numbers.length === 0 ? last : `${numbers.join(", ")} and ${last}`}`;
}

/** A verdict reached at several places: the worst, and how all stand: `worst at cylinder 3; fails at cylinder 3; …`. */
export function describePlaces({ at, places = [] }: Pick<ReportVerdict, "at" | "places">): string {
  const words = [...new Set(places.map(({ verdict }) => verdict))];
  const groups = words.map((word) => {
    const there = places.filter(({ verdict }) => verdict === word).map((place) => place.at);
    return there.length === places.length
      ? `${word} at each of ${places.length}`
      : `${word} at ${namePlaces(there)}`;
  });
  return `worst at ${at}; ${groups.join("; ")}`;
}
