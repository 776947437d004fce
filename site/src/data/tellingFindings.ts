import type { ReportVerdict, VerdictWord } from "trialfit";
import { type DemoBuild, demoBuilds } from "./demoBuilds.ts";

/** One verdict with the build that it was said of. */
export interface Finding {
  readonly demo: DemoBuild;
  readonly verdict: ReportVerdict;
}

const WEIGHT_ORDER = ["stop", "caution", "note"];

/** True for a verdict that rests on a single number held against a limit: it makes a picture. */
function drawable({ comparisons }: ReportVerdict): boolean {
  const required = comparisons.filter((one) => one.in === "requires");
  return (
    required.length === 1 && required[0]?.margin !== undefined && Number.isFinite(required[0].margin.nominal)
  );
}

/** The heaviest finding of the demo builds for each of these verdicts, each of another rule. */
export function tellingFindings(words: readonly VerdictWord[]): readonly Finding[] {
  const all = demoBuilds.flatMap((demo) => demo.report.verdicts.map((verdict) => ({ demo, verdict })));
  const heaviest = all
    .filter(({ verdict }) => drawable(verdict))
    .sort((a, b) => WEIGHT_ORDER.indexOf(a.verdict.weight) - WEIGHT_ORDER.indexOf(b.verdict.weight));
  const chosen: Finding[] = [];
  for (const word of words) {
    const next = heaviest.find(
      ({ verdict }) => verdict.verdict === word && !chosen.some((one) => one.verdict.rule === verdict.rule),
    );
    if (next !== undefined) chosen.push(next);
  }
  return chosen;
}
