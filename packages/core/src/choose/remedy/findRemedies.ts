import { type EvaluateOptions, evaluation } from "../../evaluate.ts";
import { RuleError } from "../../judge/RuleError.ts";
import type { Evaluation } from "../../live/Evaluation.ts";
import type { StopSignal } from "../../live/refine.ts";
import { takeTurns } from "../../live/takeTurns.ts";
import { nearestWord } from "../../read/nearestWord.ts";
import type { ReportVerdict } from "../../report/Report.ts";
import { heaviestFirst } from "./Consequences.ts";
import { contradictionsOf, withContradictions } from "./contradictionsOf.ts";
import type { FindingRemedies, RemedyReport } from "./Remedy.ts";
import { RemedySearch } from "./RemedySearch.ts";

/** How far the search is. */
export interface RemedyProgress {
  /** Dimensions that were tried for the findings asked for, and all of them; undefined while the build is judged. */
  readonly dimensions?: { readonly tried: number; readonly of: number };
}

export interface RemedyOptions extends Pick<EvaluateOptions, "stage" | "sets" | "rules"> {
  /** Ids of the rules for whose findings remedies are sought. Absent: every finding. */
  readonly only?: readonly string[];
  /** When it is aborted, the search ends with its reason at the next breath. */
  readonly signal?: StopSignal;
  readonly told?: (progress: RemedyProgress) => void;
}

const byWeight = (a: ReportVerdict, b: ReportVerdict): number =>
  heaviestFirst.indexOf(a.weight) - heaviestFirst.indexOf(b.weight) ||
  Number(a.verdict === "open") - Number(b.verdict === "open") ||
  (a.rule < b.rule ? -1 : 1);

/** @throws RuleError for the id of a rule that is not judged */
function refuseUnknown(only: readonly string[], { rules, set }: Evaluation): void {
  const ids = rules.map(({ file }) => file.id).filter((id) => set?.silenced.has(id) !== true);
  const stranger = only.find((id) => !ids.includes(id));
  if (stranger === undefined) return;
  const near = nearestWord(stranger, ids);
  const hint = near === undefined ? "" : `; did you mean "${near}"?`;
  throw new RuleError(stranger, [`no rule that is judged has this id${hint}`]);
}

/**
 * For every finding of a build that fails or is open the smallest change of one dimension that makes it hold over the
 * whole band: each dimension on which the finding rests is moved alone, kept as closely as before, in steps in which it
 * can be ordered, machined or set. What holds goes on holding, or no longer matters, and nothing begins to fail; what
 * fails already and becomes worse is told. Where no such change exists, the smallest that break only what weighs less.
 * A measured size is taken to come out as changed and to be measured again as well as before; until it is, a stage by
 * which it must be measured leaves the rule open. Words are not changed.
 * A whole build takes from some seconds to minutes; others have their turn meanwhile.
 * @param input a build from `readBuildText`, or plain data in the shape of a build file
 * @throws as `evaluate` does; RuleError also when a rule in `only` is none of those that are judged; the reason of the
 * signal when it was aborted
 */
export async function findRemedies(input: unknown, options: RemedyOptions = {}): Promise<RemedyReport> {
  const { only, signal, told, ...how } = options;
  const work = evaluation(input, how);
  refuseUnknown(only ?? [], work);
  told?.({});
  for await (const piece of work.work()) await takeTurns(piece, signal);
  const report = await work.report();
  const asked = report.verdicts.filter(({ rule }) => only === undefined || only.includes(rule));
  const isFinding = ({ verdict }: ReportVerdict) => verdict === "fails" || verdict === "open";
  const search = new RemedySearch(work.values, work.rules, report.verdicts);
  const findings: FindingRemedies[] = [];
  const sought = asked
    .filter(isFinding)
    .sort(byWeight)
    .map(({ rule: id }) => work.rules.find(({ file }) => file.id === id)!);
  const of = sought.reduce((sum, rule) => sum + search.dimensionsOf(rule).length, 0);
  let tried = 0;
  const tell = () => told?.({ dimensions: { tried: tried++, of } });
  for (const rule of sought) findings.push(await takeTurns(search.remedies(rule, tell), signal));
  const contradictions = contradictionsOf(findings);
  return {
    format: "trialfit-remedies",
    formatVersion: 1,
    build: report.build.name,
    findings: withContradictions(findings, contradictions),
    contradictions,
    unsettled: asked.filter(({ verdict }) => verdict === "unknown").length,
    asked:
      only === undefined
        ? []
        : asked.filter((one) => !isFinding(one)).map(({ rule, verdict }) => ({ rule, verdict })),
  };
}
