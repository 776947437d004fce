import type { CompiledRule, ConditionNode, Leaf } from "../../judge/CompiledRule.ts";
import { compare, isNumeric } from "../../judge/compare.ts";
import { type Lookup, operandOf } from "../../judge/decide.ts";
import { withLimits } from "../../judge/decideRule.ts";
import { spareOf } from "../../judge/spareOf.ts";
import { leanOfNode } from "./leanOf.ts";

/** How far something that a rule compares is from where it should be. */
export interface Shortfall {
  /** Over the whole band [SI]; infinite where it is not known. */
  readonly short: number;
  /** How large what is compared is [SI]. */
  readonly size: number;
}

/** By the name of the fact. */
export type Shortfalls = ReadonlyMap<string, Shortfall>;

/** Part of the shortfall below which nobody would see it grow, nor a search of a band. */
const UNSEEN = 1e-4;
/** Part of the shortfall, and of the size of what is compared, below which its growth makes no difference. */
const SLIGHT = 0.01;
const SLIGHT_OF_SIZE = 0.001;

function ofLeaf(leaf: Leaf, lookup: Lookup): Shortfall {
  const left = lookup(leaf.fact);
  const right = operandOf(leaf, lookup);
  const surely = compare[leaf.operator]("surely", left, right);
  if (!isNumeric(leaf.operator) || left.kind !== "band" || right.kind !== "band")
    return { short: surely ? 0 : Number.POSITIVE_INFINITY, size: 0 };
  const size = Math.max(Math.abs(left.nominal), Math.abs(right.nominal));
  return { short: surely ? 0 : Math.max(0, -spareOf(leaf, left, right)), size };
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
  const all = new Map<string, Shortfall>();
  for (const leaf of countingLeaves(rule.requires, scoped)) {
    const { short, size } = ofLeaf(leaf, scoped);
    const before = all.get(leaf.fact) ?? { short: 0, size: 0 };
    all.set(leaf.fact, { short: before.short + short, size: Math.max(before.size, size) });
  }
  return all;
}

/** At several places the greatest of each. */
export function worstShortfalls(places: readonly Shortfalls[]): Shortfalls {
  const worst = new Map<string, Shortfall>();
  for (const [fact, one] of places.flatMap((place) => [...place]))
    if (one.short >= (worst.get(fact)?.short ?? 0)) worst.set(fact, one);
  return worst;
}

/** How much more a rule lacks. */
export interface Growth {
  /** Part of what was lacking; infinite where nothing was, or it is no longer known. */
  readonly by: number;
  /** Whether it makes no difference to what is ordered. */
  readonly slight: boolean;
}

/** @returns of what lacks more the greatest growth; undefined where nothing does */
export function growthOf(before: Shortfalls, after: Shortfalls): Growth | undefined {
  const growths = [...after].flatMap(([fact, { short, size }]): readonly Growth[] => {
    const was = before.get(fact)?.short ?? 0;
    if (short <= was) return [];
    const more = short - was;
    const by = was === 0 ? Number.POSITIVE_INFINITY : short / was - 1;
    return by > UNSEEN ? [{ by, slight: more < Math.max(SLIGHT * was, SLIGHT_OF_SIZE * size) }] : [];
  });
  return growths.sort((a, b) => Number(a.slight) - Number(b.slight) || b.by - a.by)[0];
}
