import type { ConditionNode, Leaf } from "../../judge/CompiledRule.ts";
import { compare } from "../../judge/compare.ts";
import { type Lookup, operandOf } from "../../judge/decide.ts";
import type { BandFact } from "../../judge/Fact.ts";
import { spareOf } from "../../judge/spareOf.ts";

/** A difference as a part of the greater of the two sides, so that numbers of all kinds and sizes can be compared. */
function relative(difference: number, left: BandFact, right: BandFact): number {
  const size = Math.max(Math.abs(left.nominal), Math.abs(right.nominal));
  return size === 0 ? 0 : difference / size;
}

/** On the good side of a comparison of numbers the greatest difference over both bands. */
function mostSpare({ operator }: Leaf, left: BandFact, right: BandFact): number {
  return operator.startsWith("greater") ? left.high - right.low : right.high - left.low;
}

/**
 * How far a condition is from its limits at the worst end of all bands: of a comparison the least difference on the
 * good side as a part of the greater side at nominal values; the least of `all`, the greatest of `any`. Words that are
 * as they must be are +∞, others −∞.
 * @returns NaN where a fact that it rests on is missing; of several alternatives those that are there count
 */
export function relativeMargin(node: ConditionNode, lookup: Lookup): number {
  if (node.kind === "leaf") {
    const left = lookup(node.fact);
    const right = operandOf(node, lookup);
    if (left.kind === "band" && right.kind === "band")
      return relative(spareOf(node, left, right), left, right);
    if (left.kind === "missing" || right.kind === "missing") return Number.NaN;
    return compare[node.operator]("surely", left, right) ? Infinity : -Infinity;
  }
  const margins = node.children.map((child) => relativeMargin(child, lookup));
  if (node.kind === "all") return margins.reduce((least, margin) => Math.min(least, margin), Infinity);
  const known = margins.filter((margin) => !Number.isNaN(margin));
  return known.length === 0 ? Number.NaN : Math.max(...known);
}

/** By how much a comparison is missed, and what on. */
export interface Miss {
  readonly leaf: Leaf;
  /** Below zero: the best end of the bands, as a part of the greater side; −∞ for words. */
  readonly relative: number;
}

/**
 * The comparison for which a condition that surely fails is missed: at the best ends of the bands, the worst of `all`,
 * the nearest of `any`.
 * @returns undefined where nothing is missed
 */
export function missOf(node: ConditionNode, lookup: Lookup): Miss | undefined {
  if (node.kind === "leaf") {
    const left = lookup(node.fact);
    const right = operandOf(node, lookup);
    if (compare[node.operator]("possibly", left, right)) return undefined;
    if (left.kind !== "band" || right.kind !== "band") return { leaf: node, relative: -Infinity };
    return { leaf: node, relative: relative(mostSpare(node, left, right), left, right) };
  }
  const misses = node.children.map((child) => missOf(child, lookup));
  if (node.kind === "any" && misses.some((miss) => miss === undefined)) return undefined;
  const found = misses.filter((miss) => miss !== undefined);
  if (found.length === 0) return undefined;
  const better = node.kind === "any" ? 1 : -1;
  return found.reduce((best, miss) => (better * (miss.relative - best.relative) > 0 ? miss : best));
}
