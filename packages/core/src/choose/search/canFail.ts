import type { CompiledRule, ConditionNode } from "../../judge/CompiledRule.ts";

type IsThere = (fact: string) => boolean;

/** Whether a condition can come out on one side by the facts that are there, whatever the others are. */
function canSettle(node: ConditionNode, isThere: IsThere, every: ConditionNode["kind"]): boolean {
  if (node.kind === "leaf")
    return isThere(node.fact) && (node.value.kind !== "fact" || isThere(node.value.fact));
  const settles = (child: ConditionNode) => canSettle(child, isThere, every);
  return node.kind === every ? node.children.every(settles) : node.children.some(settles);
}

/**
 * Whether a rule can surely fail by some of its facts alone: so that it is not asked in vain. A limit is always there,
 * as a band over its cases.
 */
export function canFail(rule: CompiledRule, isThere: IsThere): boolean {
  const limits = new Set(rule.limits.map(({ fact }) => fact));
  const there: IsThere = (fact) => limits.has(fact) || isThere(fact);
  if (rule.when !== undefined && !canSettle(rule.when, there, "all")) return false;
  // One of several that must hold is enough to fail; of alternatives all must.
  return canSettle(rule.requires, there, "any");
}
