import { type CompiledRule, type ConditionNode, leavesOf } from "./CompiledRule.ts";

const named = (nodes: readonly (ConditionNode | undefined)[]) =>
  nodes.flatMap(leavesOf).flatMap(({ fact, value }) => (value.kind === "fact" ? [fact, value.fact] : [fact]));

/** Facts of some conditions, with those of the cases of every limit that they compare with. */
function factsOf({ limits }: CompiledRule, nodes: readonly (ConditionNode | undefined)[]): readonly string[] {
  const byName = new Map(limits.map((limit) => [limit.fact, limit]));
  const own = named(nodes);
  const cases = own.flatMap((name) => byName.get(name)?.cases ?? []).map((one) => one.when);
  return [...own, ...named(cases)].filter((name) => !byName.has(name));
}

const known = new WeakMap<CompiledRule, ReadonlySet<string>>();

/**
 * Fields and quantities that decide a rule: those that its conditions and the cases of its limits compare. Names that
 * only its texts print are not among them.
 */
export function decidingFacts(rule: CompiledRule): ReadonlySet<string> {
  let facts = known.get(rule);
  if (facts === undefined) {
    const cases = rule.limits.flatMap((limit) => limit.cases.map((one) => one.when));
    facts = new Set(factsOf(rule, [rule.when, rule.requires, ...cases]));
    known.set(rule, facts);
  }
  return facts;
}

/** Of these, those that decide whether the rule is relevant. */
export function relevanceFacts(rule: CompiledRule): readonly string[] {
  return factsOf(rule, [rule.when]);
}
