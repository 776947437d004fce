import type { CompiledRule, ConditionNode, Leaf } from "../../judge/CompiledRule.ts";
import { compare, isNumeric } from "../../judge/compare.ts";
import { type Lookup, operandOf } from "../../judge/decide.ts";
import { withLimits } from "../../judge/decideRule.ts";
import { leanOfNode } from "./leanOf.ts";
import { spareOf } from "./spareOf.ts";

/** How far what a rule compares is from where it should be, by the name of the fact [SI]. */
export type Shortfalls = ReadonlyMap<string, number>;

/** Part of the shortfall below which nobody would see it grow, nor a search of a band. */
const UNSEEN = 1e-4;

function ofLeaf(leaf: Leaf, lookup: Lookup): number {
  const left = lookup(leaf.fact);
  const right = operandOf(leaf, lookup);
  if (compare[leaf.operator]("surely", left, right)) return 0;
  if (!isNumeric(leaf.operator) || left.kind !== "band" || right.kind !== "band")
    return Number.POSITIVE_INFINITY;
  return Math.max(0, -spareOf(leaf, left, right));
}

/** The comparisons that count: of alternatives those of the one that is nearest to holding. */
function countingLeaves(node: ConditionNode, lookup: Lookup): readonly Leaf[] {
  if (node.kind === "leaf") return [node];
  if (node.kind === "all") return node.children.flatMap((child) => countingLeaves(child, lookup));
  const leans = node.children.map((child) => leanOfNode(child, lookup));
  return countingLeaves(node.children[leans.indexOf(Math.max(...leans))]!, lookup);
}

/** What is missing over the whole band; of a window whichever side it is missed on. */
export function shortfallsOf(rule: CompiledRule, lookup: Lookup): Shortfalls {
  const scoped = withLimits(rule, lookup);
  const short = new Map<string, number>();
  for (const leaf of countingLeaves(rule.requires, scoped))
    short.set(leaf.fact, (short.get(leaf.fact) ?? 0) + ofLeaf(leaf, scoped));
  return short;
}

/** At several places the greatest of each. */
export function worstShortfalls(places: readonly Shortfalls[]): Shortfalls {
  const worst = new Map<string, number>();
  for (const [fact, short] of places.flatMap((one) => [...one]))
    worst.set(fact, Math.max(worst.get(fact) ?? 0, short));
  return worst;
}

/**
 * By which part of what it lacked something that is compared lacks more than it did, of several the greatest: 0 where
 * nothing does, infinite where something lacked nothing before.
 */
export function growthOf(before: Shortfalls, after: Shortfalls): number {
  const growths = [...after].map(([fact, short]) => {
    const was = before.get(fact) ?? 0;
    return short > was ? (was === 0 ? Number.POSITIVE_INFINITY : short / was - 1) : 0;
  });
  const most = Math.max(0, ...growths);
  return most > UNSEEN ? most : 0;
}
