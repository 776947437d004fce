import type { CompiledRule, ConditionNode, Leaf } from "../../judge/CompiledRule.ts";
import { compare, isNumeric } from "../../judge/compare.ts";
import { type Lookup, operandOf } from "../../judge/decide.ts";
import { withLimits } from "../../judge/decideRule.ts";
import type { BandFact } from "../../judge/Fact.ts";
import { spareOf } from "../../judge/spareOf.ts";

/** Below any difference of two numbers that are not the same, against their size. */
const NEXT_TO_NOTHING = 1e-300;

/** What is to spare over the whole band, against the size of what is compared. */
function relativeSpare(leaf: Leaf, left: BandFact, right: BandFact): number {
  const spare = spareOf(leaf, left, right);
  const size = Math.max(Math.abs(left.nominal), Math.abs(right.nominal), Number.MIN_VALUE);
  return Number.isFinite(spare) ? spare / size : Math.sign(spare) * Number.MAX_VALUE;
}

function leanOfLeaf(leaf: Leaf, lookup: Lookup): number {
  const left = lookup(leaf.fact);
  const right = operandOf(leaf, lookup);
  const surely = compare[leaf.operator]("surely", left, right);
  if (!isNumeric(leaf.operator) || left.kind !== "band" || right.kind !== "band")
    return surely ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
  const spare = relativeSpare(leaf, left, right);
  // The comparison itself decides at the limit.
  return surely ? Math.max(spare, NEXT_TO_NOTHING) : Math.min(spare, -NEXT_TO_NOTHING);
}

/** The same of a condition. @param lookup knows the limits, too */
export function leanOfNode(node: ConditionNode, lookup: Lookup): number {
  if (node.kind === "leaf") return leanOfLeaf(node, lookup);
  const all = node.children.map((child) => leanOfNode(child, lookup));
  return node.kind === "all" ? Math.min(...all) : Math.max(...all);
}

/**
 * How far what a rule requires is from surely holding: not negative just where it does. Comparisons of different
 * things are weighed by their own size, so that only the sign means something, and whether it grows or falls.
 */
export function leanOf(rule: CompiledRule, lookup: Lookup): number {
  return leanOfNode(rule.requires, withLimits(rule, lookup));
}
