import type { ReportVerdict } from "./Report.ts";

/** Entries that verdicts lack, each with the number of rules that name it, the most wanted first. */
export function mostWanted(
  verdicts: readonly ReportVerdict[],
): readonly { readonly path: string; readonly rules: number }[] {
  const counts = new Map<string, number>();
  for (const path of verdicts.flatMap((verdict) => verdict.missing))
    counts.set(path, (counts.get(path) ?? 0) + 1);
  return [...counts]
    .map(([path, rules]) => ({ path, rules }))
    .sort((a, b) => b.rules - a.rules || (a.path < b.path ? -1 : 1));
}
