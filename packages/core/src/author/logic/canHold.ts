import type { CompiledLimit, ConditionNode, Group } from "../../judge/CompiledRule.ts";
import { negated } from "../../judge/compare.ts";
import { type Domain, intersect, isEmpty, isSame } from "./Domain.ts";
import { restrictionOf } from "./domainOf.ts";

/** As many ways as are tried before a condition is taken to be one that can hold. */
const MOST_WAYS = 50_000;

/** The opposite of a condition, for facts that are known exactly. */
export function opposite(node: ConditionNode): ConditionNode {
  if (node.kind === "leaf") return { ...node, operator: negated[node.operator] };
  return { kind: node.kind === "all" ? "any" : "all", children: node.children.map(opposite) };
}

/** What a choice comes to where some facts are known: the ways that are left of it, or nothing when it is met already. */
function waysLeft(
  { children }: Group,
  known: ReadonlyMap<string, Domain>,
  limits: readonly CompiledLimit[],
): readonly ConditionNode[] | undefined {
  const left: ConditionNode[] = [];
  for (const child of children) {
    if (child.kind === "leaf") {
      const { of, domain, whole } = restrictionOf(child, limits);
      const before = known.get(of) ?? whole;
      const narrowed = intersect(before, domain);
      if (isEmpty(narrowed)) continue;
      if (isSame(narrowed, before)) return undefined;
    }
    left.push(child);
  }
  return left;
}

/**
 * Whether there are facts, each known exactly, for which all these conditions hold. Quantities are taken to be free
 * of each other, so `false` is certain and `true` is not: two of them can be bound by mechanics.
 */
export function canHold(conditions: readonly ConditionNode[], limits: readonly CompiledLimit[]): boolean {
  let ways = 0;
  const search = (pending: readonly ConditionNode[], known: ReadonlyMap<string, Domain>): boolean => {
    const left = new Map(known);
    const queue = [...pending];
    let choices: Group[] = [];
    while (queue.length > 0) {
      for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
        if (node.kind === "leaf") {
          const { of, domain, whole } = restrictionOf(node, limits);
          const narrowed = intersect(left.get(of) ?? whole, domain);
          if (isEmpty(narrowed)) return false;
          left.set(of, narrowed);
        } else if (node.kind === "all") queue.push(...node.children);
        else choices.push(node as Group);
      }
      // A choice of which one way is left is no choice: it may settle others.
      const open: Group[] = [];
      for (const choice of choices) {
        const children = waysLeft(choice, left, limits);
        if (children === undefined) continue;
        if (children.length === 0) return false;
        if (children.length === 1) queue.push(children[0]!);
        else open.push({ kind: "any", children });
      }
      choices = open;
    }
    choices.sort((a, b) => a.children.length - b.children.length);
    const [first, ...rest] = choices;
    if (first === undefined) return true;
    return first.children.some((child) => {
      ways += 1;
      return ways > MOST_WAYS || search([child, ...rest], left);
    });
  };
  return search(conditions, new Map());
}
