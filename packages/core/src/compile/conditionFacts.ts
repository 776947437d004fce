import { type CompiledRule, leavesOf } from "../judge/CompiledRule.ts";

const known = new WeakMap<CompiledRule, ReadonlySet<string>>();

/**
 * Fields and quantities that decide a rule: those that its conditions and the cases of its limits compare. Names that
 * only its texts print are not among them.
 */
export function conditionFacts(rule: CompiledRule): ReadonlySet<string> {
  let facts = known.get(rule);
  if (facts === undefined) {
    const limits = new Set(rule.limits.map((limit) => limit.fact));
    const cases = rule.limits.flatMap((limit) => limit.cases.map((one) => one.when));
    const named = [rule.when, rule.requires, ...cases]
      .flatMap(leavesOf)
      .flatMap(({ fact, value }) => (value.kind === "fact" ? [fact, value.fact] : [fact]));
    facts = new Set(named.filter((name) => !limits.has(name)));
    known.set(rule, facts);
  }
  return facts;
}
