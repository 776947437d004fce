import { quantities } from "../derive/generated/quantities.ts";
import { isAssumed } from "../derive/isAssumed.ts";
import { decideLimit } from "../judge/decide.ts";
import type { Settlement } from "../judge/howToSettle.ts";
import type { Judged } from "../judge/Judged.ts";
import { lookupOf } from "../judge/lookupOf.ts";
import type { HoldsIn } from "../judge/sampleVerdicts.ts";
import { type BandEnd, fillTemplate } from "../judge/templateNames.ts";
import { type Confirmation, confirmationPath } from "../read/confirmations.ts";
import { printBand, printDerivation, printField } from "./printValue.ts";
import type { ReportVerdict } from "./Report.ts";

/** Verdicts that ask something of the builder. */
export const ASKING: ReadonlySet<string> = new Set(["fails", "open", "unknown"]);

type Print = (name: string, end: BandEnd) => string | undefined;

function printer({ rule, values, derivations }: Judged): Print {
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
function settleBy({ verdict, derivations, values }: Judged): readonly string[] {
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

/** What to measure and how well, each in the unit in which it was written. */
function reportSettlement(
  { becomes, provided, measure }: Settlement,
  { values }: Judged,
): NonNullable<ReportVerdict["settlement"]> {
  return {
    becomes,
    provided,
    measure: measure.map(({ path, uncertainty }) => {
      const value = values.get(path);
      return { path, uncertainty, unit: value?.kind === "dimension" ? value.unit : "1" };
    }),
  };
}

/** Fields that the compared values rest on without having been measured or published. */
function assumedOf({ verdict, derivations, values }: Judged): readonly string[] {
  const paths = verdict.comparisons.flatMap(({ fact }) => {
    const derivation = derivations.get(fact);
    if (derivation?.state === "value") return derivation.assumed;
    return isAssumed(values.get(fact)) ? [fact] : [];
  });
  return [...new Set(paths)].sort();
}

/** What the ways to the compared values take for granted. */
function takenFor({ verdict, derivations }: Judged): readonly string[] {
  const all = verdict.comparisons.flatMap(({ fact }) => {
    const derivation = derivations.get(fact);
    return derivation?.state === "value" ? derivation.takenFor : [];
  });
  return [...new Set(all)];
}

/** Nothing is missing but a person's word. */
function awaitsConfirmation({ verdict, rule }: Judged): boolean {
  const own = confirmationPath(rule.file.id);
  return (
    verdict.verdict === "unknown" &&
    verdict.reasons.length === 0 &&
    verdict.missing.every((path) => path === own)
  );
}

/** What a rule tells the builder to do, with the numbers of this build. */
export function remedyOf(judged: Judged): string {
  return fillTemplate(judged.rule.file.otherwise.do, printer(judged));
}

/** Verdicts beside which a share of drawn engines has a meaning: nothing is missing. */
const COUNTED: ReadonlySet<string> = new Set(["holds", "fails", "open"]);

/**
 * The verdict of one rule as the report carries it.
 * @param confirmations what a person confirmed, by rule
 * @param holdsIn in how many drawn engines it holds, where engines were drawn
 */
export function reportVerdict(
  judged: Judged,
  confirmations: ReadonlyMap<string, Confirmation>,
  holdsIn?: HoldsIn,
): ReportVerdict {
  const { verdict, rule, settlement } = judged;
  const confirmed = rule.file.confirm === undefined ? undefined : confirmations.get(rule.file.id);
  const { file } = rule;
  const print = printer(judged);
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
    // What holds on paper and was not measured asks for measuring, not for a remedy.
    ...(ASKING.has(verdict.verdict) && verdict.unmeasured === undefined ? { remedy: remedyOf(judged) } : {}),
    ...(file.caution === undefined ? {} : { caution: file.caution }),
    ...(file.disputed === undefined ? {} : { disputed: file.disputed }),
    comparisons: verdict.comparisons,
    missing: verdict.missing,
    reasons: verdict.reasons,
    assumed: assumedOf(judged),
    takenFor: takenFor(judged),
    settleBy: verdict.verdict === "open" ? settleBy(judged) : [],
    ...(settlement === undefined ? {} : { settlement: reportSettlement(settlement, judged) }),
    ...(holdsIn === undefined || !COUNTED.has(verdict.verdict) ? {} : { holdsIn }),
    ...(verdict.unmeasured === undefined ? {} : { unmeasured: verdict.unmeasured }),
    ...(judged.at === undefined ? {} : { at: judged.at }),
    ...(judged.places === undefined ? {} : { places: judged.places }),
    ...(file.confirm === undefined ? {} : { confirm: file.confirm }),
    ...(confirmed === undefined ? {} : { confirmed }),
    toConfirm: awaitsConfirmation(judged),
    standing: Object.fromEntries(
      Object.entries(file.limits ?? {}).map(([name, limit]) => [name, limit.standing]),
    ),
    sources: file.sources as ReportVerdict["sources"],
  };
}
