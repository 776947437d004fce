import { quantities } from "../derive/generated/quantities.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { decidingFacts } from "../judge/decidingFacts.ts";
import { costOf } from "./partial/costOf.ts";

const ofRule = (rule: CompiledRule): number =>
  [...decidingFacts(rule)].reduce((sum, fact) => sum + costOf(quantities, fact), 0);

/**
 * Rules in an order in which a search that stops at the first failure stops soon: those first whose facts cost little
 * to work out. The same order in every run; of rules that cost the same, by id.
 */
export function cheapestFirst(rules: readonly CompiledRule[]): readonly CompiledRule[] {
  return rules
    .map((rule) => ({ rule, cost: ofRule(rule) }))
    .sort((a, b) => a.cost - b.cost || (a.rule.file.id < b.rule.file.id ? -1 : 1))
    .map(({ rule }) => rule);
}
