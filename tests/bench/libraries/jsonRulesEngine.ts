import { Engine, type NestedCondition } from "json-rules-engine";
import type { CompiledRule } from "trialfit";
import {
  codeOf,
  isContained,
  isWord,
  type Node,
  type PlainFacts,
  type PlainJudge,
  wordsOf,
} from "./PlainJudge.ts";

/**
 * json-rules-engine used plainly: every rule and every `when` an event rule of one engine, every fact a constant.
 * It has no conditional values: what a limit with cases comes to is handed in as a fact of its own, and working that
 * out is not counted.
 */
export function jsonRulesEngine(
  rules: readonly CompiledRule[],
  limitsOf: (facts: PlainFacts) => PlainFacts,
): PlainJudge {
  const engine = new Engine([], { allowUndefinedFacts: false });
  const condition = (node: Node, rule: CompiledRule): NestedCondition => {
    if (node.kind !== "leaf") {
      const children = node.children.map((child) => condition(child, rule));
      return node.kind === "all" ? { all: children } : { any: children };
    }
    if (isWord(node))
      return { fact: node.fact, operator: isContained(node) ? "in" : "notIn", value: [...wordsOf(node)] };
    if (node.value.kind === "number")
      return { fact: node.fact, operator: node.operator, value: node.value.value };
    const name = node.value.kind === "fact" ? node.value.fact : "";
    const limit = rule.limits.find(({ fact }) => fact === name);
    if (limit?.cases.length === 0) return { fact: node.fact, operator: node.operator, value: limit.value };
    return {
      fact: node.fact,
      operator: node.operator,
      value: { fact: limit === undefined ? name : `${rule.file.id}/${name}` },
    };
  };
  for (const [index, rule] of rules.entries())
    for (const [part, node] of [
      ["when", rule.when],
      ["requires", rule.requires],
    ] as const) {
      if (node === undefined) continue;
      const tree = condition(node, rule);
      const conditions = "all" in tree || "any" in tree ? tree : { all: [tree] };
      engine.addRule({ conditions, event: { type: part, params: { index } } } as never);
    }
  return async (facts) => {
    const { results } = await engine.run({ ...facts, ...limitsOf(facts) });
    const met = { when: new Set<number>(), requires: new Set<number>() };
    for (const { event } of results)
      met[event!.type as keyof typeof met].add((event!.params as { index: number }).index);
    return Uint8Array.from(rules, ({ when }, index) =>
      codeOf(when === undefined || met.when.has(index), met.requires.has(index)),
    );
  };
}
