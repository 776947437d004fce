import type { Operator, RuleFile } from "@trialfit/rules";

/** What a leaf compares its fact with. */
export type Reference =
  | { readonly kind: "fact"; readonly fact: string }
  | { readonly kind: "number"; readonly value: number; readonly text: string }
  | { readonly kind: "words"; readonly words: readonly string[] };

export interface Leaf {
  readonly kind: "leaf";
  readonly fact: string;
  readonly operator: Operator;
  readonly value: Reference;
}

export interface Group {
  readonly kind: "all" | "any";
  readonly children: readonly ConditionNode[];
}

/** A condition tree without negations, its numbers in SI. */
export type ConditionNode = Leaf | Group;

export interface CompiledLimit {
  /** Name as rules use it: `limit.least`. */
  readonly fact: string;
  readonly unit: string;
  readonly value: number;
  readonly cases: readonly { readonly when: ConditionNode; readonly value: number; readonly text: string }[];
}

export interface CompiledRule {
  readonly file: RuleFile;
  readonly when: ConditionNode | undefined;
  readonly requires: ConditionNode;
  readonly limits: readonly CompiledLimit[];
  /** Fields and quantities that its conditions, limits and remedy text name. */
  readonly facts: readonly string[];
}

/** Every leaf of a tree, in reading order. */
export function leavesOf(node: ConditionNode | undefined): readonly Leaf[] {
  return placedLeaves(node).map(({ leaf }) => leaf);
}

/** Every leaf with whether it is one of several ways to satisfy the condition. */
export function placedLeaves(
  node: ConditionNode | undefined,
  alternative = false,
): readonly { readonly leaf: Leaf; readonly alternative: boolean }[] {
  if (node === undefined) return [];
  if (node.kind === "leaf") return [{ leaf: node, alternative }];
  const several = node.kind === "any" && node.children.length > 1;
  return node.children.flatMap((child) => placedLeaves(child, alternative || several));
}
