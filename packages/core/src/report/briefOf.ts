import type { BriefVerdicts } from "../compile/BriefJudge.ts";
import type { Report } from "./Report.ts";

/** What a report says, without reasons. */
export function briefOf({ summary, verdicts, assumptions }: Report): BriefVerdicts {
  const those = (word: string) =>
    verdicts.filter(({ verdict, toConfirm }) => verdict === word && !toConfirm).map(({ rule }) => rule);
  return {
    sound: summary.sound,
    holds: summary.holds,
    notApplicable: summary.notApplicable,
    fails: those("fails"),
    open: those("open"),
    unknown: those("unknown"),
    toConfirm: verdicts.filter(({ toConfirm }) => toConfirm).map(({ rule }) => rule),
    assumed: assumptions.map(({ path }) => path),
  };
}
