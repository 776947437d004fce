import { quantities as catalog } from "../derive/generated/quantities.ts";
import { version } from "../derive/generated/version.ts";
import { rootFinderOf } from "../derive/rootsOf.ts";
import type { Steps } from "../derive/Steps.ts";
import { withDefaults } from "../derive/withDefaults.ts";
import type { VerdictWord } from "../judge/Verdict.ts";
import type { Build } from "../read/Build.ts";
import type { Report, ReportQuantity, ReportVerdict } from "../report/Report.ts";
import type { BuildChange, QuantityChange, Side, Span, VerdictChange } from "./BuildChange.ts";
import { changedValues, type State } from "./changedValues.ts";
import { findCauses } from "./findCauses.ts";

/** A build and what was said of it. */
export interface JudgedBuild {
  readonly build: Build;
  readonly report: Report;
}

/** From what asks most of the builder to what asks nothing. */
const BADNESS: readonly VerdictWord[] = ["fails", "unknown", "open", "not-applicable", "holds"];

function stateOf(build: Build): State {
  return { build, values: withDefaults(build) };
}

function sideOf({ build, summary }: Report): Side {
  return { ...build, summary };
}

function spanOf(quantity: ReportQuantity | undefined): Span | undefined {
  return quantity?.state === "value"
    ? { low: quantity.low!, nominal: quantity.nominal!, high: quantity.high! }
    : undefined;
}

/** Whether two bands differ by more than rounding. */
function moved(before: Span | undefined, after: Span | undefined): boolean {
  if (before === undefined || after === undefined) return before !== after;
  const scale = Math.max(...[before, after].flatMap((one) => [Math.abs(one.low), Math.abs(one.high)]));
  return (["low", "nominal", "high"] as const).some(
    (end) => Math.abs(before[end] - after[end]) > 1e-9 * scale,
  );
}

function quantityChanges(before: Report, after: Report): readonly Omit<QuantityChange, "causes">[] {
  const old = new Map(before.quantities.map((one) => [one.id, one]));
  return after.quantities.flatMap((one) => {
    const [was, is] = [spanOf(old.get(one.id)), spanOf(one)];
    if (!moved(was, is)) return [];
    const { id, name, unit, decimals } = one;
    return [
      {
        id,
        name,
        unit,
        decimals,
        ...(was === undefined ? {} : { before: was }),
        ...(is === undefined ? {} : { after: is }),
      },
    ];
  });
}

function rootsIn(state: State): (fact: string) => ReadonlySet<string> {
  const finder = rootFinderOf(catalog, state.values.keys());
  return (fact) => finder.rootsOf(fact);
}

/** What a rule compared in either state, limits by their own facts left out. */
function factsOf(...verdicts: readonly ReportVerdict[]): readonly string[] {
  const compared = verdicts.flatMap((one) =>
    one.comparisons.flatMap(({ fact, againstName }) => [
      fact,
      ...(againstName === undefined ? [] : [againstName]),
    ]),
  );
  return [...new Set(compared)].filter((fact) => !fact.startsWith("limit."));
}

/** What changed between two states of a build that were judged, as `compareReports`, in steps. */
export function* compareInSteps(before: JudgedBuild, after: JudgedBuild): Steps<BuildChange> {
  const [old, fresh] = [stateOf(before.build), stateOf(after.build)];
  const [was, is] = [before.report, after.report];
  const values = changedValues(old, fresh);
  const paths = values.map(({ path }) => path);
  const roots = [rootsIn(old), rootsIn(fresh)] as const;
  const restsOn = (fact: string, path: string) => roots.some((of) => of(fact).has(path));
  const changes = quantityChanges(was, is);
  const explained = changes.filter((one) => one.before !== undefined && one.after !== undefined);
  const causes = yield* findCauses(old.values, fresh.values, paths, catalog, (path) =>
    explained.filter(({ id }) => restsOn(id, path)).map(({ id }) => id),
  );
  const changedFacts = new Set([...paths, ...changes.map(({ id }) => id)]);
  const oldVerdicts = new Map(was.verdicts.map((one) => [one.rule, one]));
  const verdicts = is.verdicts.flatMap((now): VerdictChange[] => {
    const then = oldVerdicts.get(now.rule);
    if (then === undefined || then.verdict === now.verdict) return [];
    const facts = factsOf(then, now);
    return [
      {
        rule: now.rule,
        title: now.title,
        weight: now.weight,
        before: then.verdict,
        after: now.verdict,
        because: paths.filter((path) => facts.some((fact) => restsOn(fact, path))),
        compared: facts.filter((fact) => changedFacts.has(fact)),
      },
    ];
  });
  const fall = ({ before: from, after: to }: VerdictChange) => BADNESS.indexOf(to) - BADNESS.indexOf(from);
  return {
    format: "trialfit-change",
    formatVersion: 1,
    trialfit: version,
    stage: is.stage,
    before: sideOf(was),
    after: sideOf(is),
    values,
    quantities: changes.map((one) => ({ ...one, causes: causes.get(one.id) ?? [] })),
    verdicts: verdicts.sort((a, b) => fall(a) - fall(b) || (a.rule < b.rule ? -1 : 1)),
  };
}
