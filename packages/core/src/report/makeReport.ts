import type { Derivation } from "../derive/Derivation.ts";
import { version } from "../derive/generated/version.ts";
import { aboutDraws } from "../derive/statistics/drawValue.ts";
import { reasonOfDefault } from "../derive/withDefaults.ts";
import type { AppliedSet } from "../judge/AppliedSet.ts";
import type { Judged } from "../judge/Judged.ts";
import type { Drawing, Samples } from "../judge/sampleVerdicts.ts";
import type { Build } from "../read/Build.ts";
import type { Stage } from "../read/FieldSpec.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import { nearestWord } from "../read/nearestWord.ts";
import { hashBuild } from "./hashBuild.ts";
import { printField } from "./printValue.ts";
import type { Report, ReportExchange, ReportStatistics, ReportSummary, ReportVerdict } from "./Report.ts";
import type { ReportPending } from "./ReportPending.ts";
import { reportFields } from "./reportFields.ts";
import { reportQuantity } from "./reportQuantity.ts";
import { ASKING, reportVerdict } from "./reportVerdict.ts";

/** Everything that an evaluation found. */
export interface Evaluated {
  readonly build: Build;
  readonly values: ReadonlyMap<string, FieldValue>;
  readonly derivations: ReadonlyMap<string, Derivation>;
  readonly judged: readonly Judged[];
  readonly exchanges: readonly ReportExchange[];
  readonly stage: Stage | "all";
  /** Ids of all rules, those of other stages too. */
  readonly rules: readonly string[];
  /** The set that was judged with, if any. */
  readonly set: AppliedSet | undefined;
  /** What drawn engines say, where engines were drawn. */
  readonly drawn: { readonly drawing: Drawing; readonly samples: Samples } | undefined;
  /** What is still to come. */
  readonly pending?: ReportPending | undefined;
}

function summaryOf(
  verdicts: readonly ReportVerdict[],
  stage: Stage | "all",
  pending: ReportPending | undefined,
): ReportSummary {
  const count = (word: string) => verdicts.filter((one) => one.verdict === word).length;
  const toConfirm = verdicts.filter((one) => one.toConfirm).length;
  const stops = verdicts.filter(
    (one) => one.weight === "stop" && ASKING.has(one.verdict) && !(one.toConfirm && stage === "all"),
  ).length;
  return {
    holds: count("holds"),
    fails: count("fails"),
    open: count("open"),
    unknown: count("unknown") - toConfirm,
    toConfirm,
    notApplicable: count("not-applicable"),
    sound: stops === 0 && verdicts.length > 0 && (pending?.rules.length ?? 0) === 0,
    stops,
  };
}

function statisticsOf({ draws, seed }: Drawing): ReportStatistics {
  const about = `${aboutDraws} What the drawn engines say stands beside the verdicts and never changes one: a rule that fails in one engine of a hundred is open all the same.`;
  return { draws, seed, about };
}

function reportSet(
  { id, title, use, departures }: AppliedSet,
  silenced: readonly ReportVerdict[],
): NonNullable<Report["set"]> {
  const would = silenced.map(({ rule, title: what, weight, verdict }) => ({
    rule,
    title: what,
    weight,
    verdict,
  }));
  return { id, title, ...(use === undefined ? {} : { use }), departures, silenced: would };
}

/** Puts everything that was found into one plain, serialisable report in a fixed order. */
export function makeReport(evaluated: Evaluated): Report {
  const { build, values, derivations, stage, drawn, pending } = evaluated;
  const every = evaluated.judged.map((one) =>
    reportVerdict(one, build.confirmations, drawn?.samples.rules.get(one.rule.file.id)),
  );
  const silenced = (one: ReportVerdict) => evaluated.set?.silenced.has(one.rule) === true;
  const verdicts = every.filter((one) => !silenced(one));
  const stray = [...build.confirmations.keys()].filter((rule) => !evaluated.rules.includes(rule)).sort();
  const assumptions = [...values].flatMap(([path, value]) => {
    const because = build.values.has(path) ? undefined : reasonOfDefault(path, values);
    return because === undefined ? [] : [{ path, text: printField(value), because }];
  });
  return {
    format: "trialfit-report",
    formatVersion: 1,
    trialfit: version,
    build: {
      name: build.name,
      ...(build.file === undefined ? {} : { file: build.file }),
      hash: hashBuild(build),
    },
    stage,
    ...(evaluated.set === undefined ? {} : { set: reportSet(evaluated.set, every.filter(silenced)) }),
    summary: summaryOf(verdicts, stage, pending),
    ...(pending === undefined ? {} : { pending }),
    ...(drawn === undefined ? {} : { statistics: statisticsOf(drawn.drawing) }),
    verdicts,
    quantities: [...derivations.values()]
      .map((one) => reportQuantity(one, drawn?.samples.quantities.get(one.id)))
      .sort((a, b) => (a.id < b.id ? -1 : 1)),
    fields: reportFields(values),
    assumptions,
    exchanges: evaluated.exchanges,
    strayConfirmations: stray.map((rule) => {
      const near = nearestWord(rule, evaluated.rules);
      return near === undefined ? { rule } : { rule, didYouMean: near };
    }),
  };
}
