import { type CompiledRule, leavesOf } from "../../judge/CompiledRule.ts";
import { isNumeric } from "../../judge/compare.ts";
import { canHold } from "../logic/canHold.ts";
import type { AuthorIssue, CheckedRule } from "../RuleProblem.ts";

/** What a rule asks of numbers: each fact with the direction in which it must lie. */
function directions(rule: CompiledRule): ReadonlySet<string> {
  return new Set(
    leavesOf(rule.requires)
      .filter((leaf) => isNumeric(leaf.operator))
      .map((leaf) => `${leaf.operator.startsWith("greater") ? "a lower" : "an upper"} limit of ${leaf.fact}`),
  );
}

/** One stops the build where the parts cannot be used, the other warns before that: two steps of one limit. */
const areSteps = (a: CompiledRule, b: CompiledRule) =>
  (a.file.otherwise.weight === "stop") !== (b.file.otherwise.weight === "stop");

/**
 * Names the rules that ask the same of the same numbers, and weigh as much, on builds where this one is relevant as
 * well.
 */
export function checkOverlap({ rule, others }: CheckedRule): readonly AuthorIssue[] {
  const own = directions(rule);
  return others.flatMap((other): readonly AuthorIssue[] => {
    if (other.file.id === rule.file.id || areSteps(rule, other)) return [];
    const shared = [...directions(other)].filter((direction) => own.has(direction));
    const relevance = [rule, other].flatMap(({ when }) => (when === undefined ? [] : [when]));
    if (shared.length === 0 || !canHold(relevance, [])) return [];
    const found = `${shared.join(" and ")}, which the rule ${other.file.id} asks as well`;
    const expected = "that on purpose, or one rule";
    return [{ kind: "overlap", path: ["requires"], key: true, found, expected }];
  });
}
