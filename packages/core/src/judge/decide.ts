import type { CompiledLimit, ConditionNode, Leaf } from "./CompiledRule.ts";
import { compare, type Operand, type Side } from "./compare.ts";
import { type BandFact, exactly, type Fact } from "./Fact.ts";

/** Looks up a fact of one rule: a field, a quantity, or one of its limits. */
export type Lookup = (name: string) => Fact;

/** What a condition says from both sides, and which missing inputs could change that. */
export interface Decision {
  readonly surely: boolean;
  readonly possibly: boolean;
  readonly missing: readonly string[];
  /** Why facts of unsettled parts cannot be computed, although their inputs are there. */
  readonly reasons: readonly string[];
}

/** The right-hand side of a leaf. */
export function operandOf(leaf: Leaf, lookup: Lookup): Operand {
  if (leaf.value.kind === "words") return { kind: "words", words: leaf.value.words };
  return leaf.value.kind === "fact" ? lookup(leaf.value.fact) : exactly(leaf.value.value);
}

function missingOf(operand: Operand): readonly string[] {
  return operand.kind === "band" || operand.kind === "missing" ? operand.missing : [];
}

function reasonOf(operand: Operand): readonly string[] {
  return operand.kind === "missing" && operand.reason !== undefined ? [operand.reason] : [];
}

/**
 * Decides a condition tree directly. Only inputs in parts of the tree that are not settled are named: a fact
 * that is missing beside one that already fails cannot change the answer.
 */
export function decide(node: ConditionNode, lookup: Lookup): Decision {
  if (node.kind === "leaf") {
    const left = lookup(node.fact);
    const right = operandOf(node, lookup);
    const at = (side: Side) => compare[node.operator](side, left, right);
    const surely = at("surely");
    const possibly = at("possibly");
    if (surely === possibly) return { surely, possibly, missing: [], reasons: [] };
    const both = [left, right];
    return { surely, possibly, missing: both.flatMap(missingOf), reasons: both.flatMap(reasonOf) };
  }
  const children = node.children.map((child) => decide(child, lookup));
  const [surely, possibly] =
    node.kind === "all"
      ? [children.every((child) => child.surely), children.every((child) => child.possibly)]
      : [children.some((child) => child.surely), children.some((child) => child.possibly)];
  const unsettled = surely === possibly ? [] : children;
  return {
    surely,
    possibly,
    missing: [...new Set(unsettled.flatMap((child) => child.missing))],
    reasons: [...new Set(unsettled.flatMap((child) => child.reasons))],
  };
}

/**
 * The value of a limit for one build: the first case that surely applies, or the band over every case that may.
 */
export function decideLimit(limit: CompiledLimit, lookup: Lookup): BandFact {
  const candidates: number[] = [];
  const missing: string[] = [];
  let settled = false;
  for (const one of limit.cases) {
    const decision = decide(one.when, lookup);
    if (!decision.possibly) continue;
    candidates.push(one.value);
    missing.push(...decision.missing);
    if (decision.surely) {
      settled = true;
      break;
    }
  }
  if (!settled) candidates.push(limit.value);
  return {
    kind: "band",
    low: Math.min(...candidates),
    nominal: candidates.at(-1)!,
    high: Math.max(...candidates),
    missing: [...new Set(missing)],
  };
}
