import { quantities } from "../derive/generated/quantities.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { decideRule } from "../judge/decideRule.ts";
import { exactly, type Fact } from "../judge/Fact.ts";
import type { Judged } from "../judge/Judged.ts";
import type { Judging } from "../judge/Judging.ts";
import { factOfDerivation, factOfField } from "../judge/lookupOf.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { PendingRule, ReportPending } from "../report/ReportPending.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** Facts as if each part had its nominal size; undefined where that is not known yet. */
function nominalFact(name: string, judging: Judging, values: Values): Fact | undefined {
  if (!quantities.has(name)) {
    const fact = factOfField(name, values.get(name));
    return fact.kind === "band" ? exactly(fact.nominal) : fact;
  }
  const nominal = judging.nominal(name);
  if (nominal !== undefined) return exactly(nominal);
  const derived = judging.derivations.get(name);
  return derived === undefined ? undefined : factOfDerivation(derived);
}

/** What a rule says at the nominal values, once they are all known. */
function atNominal(rule: CompiledRule, judging: Judging, values: Values): Pick<PendingRule, "atNominal"> {
  const facts = new Map<string, Fact>();
  for (const name of judging.isPlaced(rule) ? [] : rule.facts) {
    const fact = nominalFact(name, judging, values);
    if (fact === undefined) return {};
    facts.set(name, fact);
  }
  return facts.size === 0 ? {} : { atNominal: decideRule(rule, (name) => facts.get(name)!) };
}

function pendingRule(
  rule: CompiledRule,
  judging: Judging,
  waiting: ReadonlySet<string>,
  values: Values,
): PendingRule {
  const { id, title, system, parts, otherwise } = rule.file;
  const { work, weight } = otherwise;
  const awaits = rule.facts.filter((fact) => waiting.has(fact));
  return { rule: id, title, system, parts, work, weight, awaits, ...atNominal(rule, judging, values) };
}

/**
 * What is still to be worked out, in the form of the report.
 * @param unsettled judged rules for which it was not looked yet what would settle them
 */
export function pendingOf(judging: Judging, unsettled: readonly Judged[], values: Values): ReportPending {
  const waiting = new Set(judging.waiting());
  return {
    rules: judging.pending().map((rule) => pendingRule(rule, judging, waiting, values)),
    settlements: unsettled
      .filter(({ verdict }) => verdict.verdict === "open")
      .map(({ rule }) => rule.file.id),
    quantities: [...waiting].sort().map((id) => {
      const { name, symbol, unit, decimals } = quantities.get(id)!;
      const nominal = judging.nominal(id);
      return { id, name, symbol, unit, decimals, ...(nominal === undefined ? {} : { nominal }) };
    }),
  };
}
