import type { Derivation } from "../derive/Derivation.ts";
import { quantities } from "../derive/generated/quantities.ts";
import { version } from "../derive/generated/version.ts";
import { isAssumed } from "../derive/isAssumed.ts";
import { reasonOfDefault } from "../derive/withDefaults.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { decideLimit } from "../judge/decide.ts";
import { lookupOf } from "../judge/lookupOf.ts";
import { type BandEnd, fillTemplate } from "../judge/templateNames.ts";
import type { Verdict } from "../judge/Verdict.ts";
import type { Build } from "../read/Build.ts";
import type { Stage } from "../read/buildSchema.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import { hashBuild } from "./hashBuild.ts";
import { printBand, printDerivation, printField } from "./printValue.ts";
import type { Report, ReportSummary, ReportVerdict } from "./Report.ts";
import { reportFields } from "./reportFields.ts";
import { reportQuantity } from "./reportQuantity.ts";

/** Everything that an evaluation found. */
export interface Evaluated {
  readonly build: Build;
  readonly values: ReadonlyMap<string, FieldValue>;
  readonly rules: readonly CompiledRule[];
  readonly derivations: ReadonlyMap<string, Derivation>;
  readonly verdicts: readonly Verdict[];
  readonly stage: Stage | "all";
}

const ASKING = new Set(["fails", "open", "unknown"]);

type Print = (name: string, end: BandEnd) => string | undefined;

function printer(rule: CompiledRule, { values, derivations }: Evaluated): Print {
  return (name, end) => {
    const quantity = quantities.get(name);
    const derivation = derivations.get(name);
    if (quantity !== undefined)
      return derivation === undefined ? undefined : printDerivation(quantity, derivation, end);
    const limit = rule.limits.find((one) => one.fact === name);
    if (limit !== undefined) return printBand(decideLimit(limit, lookupOf(values, derivations)), limit.unit);
    const value = values.get(name);
    return value === undefined ? undefined : printField(value);
  };
}

/** Fields that spread or carry the compared quantities, largest share first. */
function settleBy(verdict: Verdict, { derivations, values }: Evaluated): readonly string[] {
  const shares = new Map<string, number>();
  for (const comparison of verdict.comparisons) {
    if (comparison.state !== "possible") continue;
    const derivation = derivations.get(comparison.fact);
    if (derivation?.state === "value") {
      for (const { path, share } of derivation.spread)
        shares.set(path, Math.max(shares.get(path) ?? 0, share));
    } else if (values.get(comparison.fact)?.kind === "dimension") shares.set(comparison.fact, 1);
  }
  return [...shares]
    .filter(([, share]) => share >= 0.02)
    .sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))
    .map(([path]) => path);
}

/** Fields that the compared values rest on without having been measured or published. */
function assumedOf(verdict: Verdict, { derivations, values }: Evaluated): readonly string[] {
  const paths = verdict.comparisons.flatMap(({ fact }) => {
    const derivation = derivations.get(fact);
    if (derivation?.state === "value") return derivation.assumed;
    return isAssumed(values.get(fact)) ? [fact] : [];
  });
  return [...new Set(paths)].sort();
}

/** What the ways to the compared values take for granted. */
function takenFor(verdict: Verdict, { derivations }: Evaluated): readonly string[] {
  const all = verdict.comparisons.flatMap(({ fact }) => {
    const derivation = derivations.get(fact);
    return derivation?.state === "value" ? derivation.takenFor : [];
  });
  return [...new Set(all)];
}

function verdictOf(verdict: Verdict, rule: CompiledRule, evaluated: Evaluated): ReportVerdict {
  const { file } = rule;
  const print = printer(rule, evaluated);
  return {
    rule: file.id,
    title: file.title,
    system: file.system,
    parts: file.parts,
    verdict: verdict.verdict,
    work: file.otherwise.work,
    weight: file.otherwise.weight,
    nominally: verdict.nominally,
    because: fillTemplate(file.because, print),
    ...(ASKING.has(verdict.verdict) ? { remedy: fillTemplate(file.otherwise.do, print) } : {}),
    ...(file.caution === undefined ? {} : { caution: file.caution }),
    ...(file.disputed === undefined ? {} : { disputed: file.disputed }),
    comparisons: verdict.comparisons,
    missing: verdict.missing,
    reasons: verdict.reasons,
    assumed: assumedOf(verdict, evaluated),
    takenFor: takenFor(verdict, evaluated),
    settleBy: verdict.verdict === "open" ? settleBy(verdict, evaluated) : [],
    standing: Object.fromEntries(
      Object.entries(file.limits ?? {}).map(([name, limit]) => [name, limit.standing]),
    ),
    sources: file.sources as ReportVerdict["sources"],
  };
}

function summaryOf(verdicts: readonly ReportVerdict[]): ReportSummary {
  const count = (word: string) => verdicts.filter((one) => one.verdict === word).length;
  const stops = verdicts.filter((one) => one.weight === "stop" && ASKING.has(one.verdict)).length;
  return {
    holds: count("holds"),
    fails: count("fails"),
    open: count("open"),
    unknown: count("unknown"),
    notApplicable: count("not-applicable"),
    sound: stops === 0 && verdicts.length > 0,
    stops,
  };
}

/** Puts everything that was found into one plain, serialisable report in a fixed order. */
export function makeReport(evaluated: Evaluated): Report {
  const { build, values, rules, derivations, stage } = evaluated;
  const verdicts = evaluated.verdicts.map((verdict, index) => verdictOf(verdict, rules[index]!, evaluated));
  const assumptions = [...values].flatMap(([path, value]) => {
    const because = reasonOfDefault(path, values);
    return build.values.has(path) || because === undefined
      ? []
      : [{ path, text: printField(value), because }];
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
    summary: summaryOf(verdicts),
    verdicts,
    quantities: [...derivations.values()].map(reportQuantity).sort((a, b) => (a.id < b.id ? -1 : 1)),
    fields: reportFields(values),
    assumptions,
  };
}
