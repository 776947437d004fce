import { type CompiledRule, leavesOf } from "../../judge/CompiledRule.ts";
import { limitName } from "../../judge/RuleReading.ts";

const known = new WeakMap<CompiledRule, readonly string[]>();

/** Fields and quantities that a rule compares, not those that its texts alone name. */
export function comparedFacts(rule: CompiledRule): readonly string[] {
  let facts = known.get(rule);
  if (facts === undefined) {
    const cases = rule.limits.flatMap((limit) => limit.cases.map((one) => one.when));
    const named = [rule.when, rule.requires, ...cases]
      .flatMap(leavesOf)
      .flatMap(({ fact, value }) => (value.kind === "fact" ? [fact, value.fact] : [fact]));
    facts = [...new Set(named)].filter((name) => limitName(name) === undefined);
    known.set(rule, facts);
  }
  return facts;
}
