import { type CompiledRule, type ConditionNode, leavesOf } from "../judge/CompiledRule.ts";

/** Facts of some conditions, with those of the cases of every limit that they compare with. */
function factsOf(rule: CompiledRule, nodes: readonly (ConditionNode | undefined)[]): readonly string[] {
  const limits = new Map(rule.limits.map((limit) => [limit.fact, limit]));
  const named = (all: readonly (ConditionNode | undefined)[]) =>
    all.flatMap(leavesOf).flatMap(({ fact, value }) => (value.kind === "fact" ? [fact, value.fact] : [fact]));
  const own = named(nodes);
  const cases = own.flatMap((name) => limits.get(name)?.cases ?? []).map((one) => one.when);
  return [...own, ...named(cases)].filter((name) => !limits.has(name));
}

const known = new WeakMap<CompiledRule, ReadonlySet<string>>();

/**
 * Fields and quantities that decide a rule: those that its conditions and the cases of its limits compare. Names that
 * only its texts print are not among them.
 */
export function conditionFacts(rule: CompiledRule): ReadonlySet<string> {
  let facts = known.get(rule);
  if (facts === undefined) {
    facts = new Set(factsOf(rule, [rule.when, rule.requires]));
    known.set(rule, facts);
  }
  return facts;
}

/** Of these, those that decide whether the rule is relevant. */
export function relevanceFacts(rule: CompiledRule): readonly string[] {
  return factsOf(rule, [rule.when]);
}
