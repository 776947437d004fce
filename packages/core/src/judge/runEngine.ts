import { operators } from "@trialfit/rules";
import { Engine, type NestedCondition, type RuleProperties } from "json-rules-engine";
import type { ConditionNode, Leaf } from "./CompiledRule.ts";
import { compare, type Operand, type Side, sides } from "./compare.ts";
import type { Fact } from "./Fact.ts";

/** One condition of one rule, to be read from every side. */
export interface Question {
  /** Unique name: the rule's id and which of its conditions it is. */
  readonly id: string;
  readonly condition: ConditionNode;
  /** Names the facts of this rule's scope: limits of different rules must not meet. */
  readonly scope: (fact: string) => string;
}

/** Answers by question and side. */
export type Answers = ReadonlyMap<string, Readonly<Record<Side, boolean>>>;

function operatorName(side: Side, operator: string): string {
  return `${side}${operator.charAt(0).toUpperCase()}${operator.slice(1)}`;
}

function leafCondition(leaf: Leaf, side: Side, scope: Question["scope"]): NestedCondition {
  const value =
    leaf.value.kind === "fact"
      ? { fact: scope(leaf.value.fact) }
      : leaf.value.kind === "words"
        ? { kind: "words", words: leaf.value.words }
        : {
            kind: "band",
            low: leaf.value.value,
            nominal: leaf.value.value,
            high: leaf.value.value,
            missing: [],
          };
  return { fact: scope(leaf.fact), operator: operatorName(side, leaf.operator), value };
}

function nested(node: ConditionNode, side: Side, scope: Question["scope"]): NestedCondition {
  if (node.kind === "leaf") return leafCondition(node, side, scope);
  const children = node.children.map((child) => nested(child, side, scope));
  return node.kind === "all" ? { all: children } : { any: children };
}

function ruleOf({ id, condition, scope }: Question, side: Side): RuleProperties {
  const tree = nested(condition, side, scope);
  return {
    conditions: "all" in tree || "any" in tree ? tree : { all: [tree] },
    event: { type: side, params: { id } },
    priority: 1,
  };
}

/**
 * Puts every question to json-rules-engine from every side. One engine for one run, constant facts without a
 * cache, equal priorities, nothing of the rule in the event: overlapping runs on one engine lose rules, and
 * deep copies of events are most of its cost.
 * @throws Error when not every question was answered from every side.
 */
export async function runEngine(
  questions: readonly Question[],
  facts: ReadonlyMap<string, Fact>,
): Promise<Answers> {
  const engine = new Engine([], { allowUndefinedFacts: false });
  for (const operator of operators) {
    for (const side of sides) {
      engine.addOperator<Fact, Operand>(operatorName(side, operator), (left, right) =>
        compare[operator](side, left, right),
      );
    }
  }
  for (const [name, fact] of facts) engine.addFact(name, fact, { cache: false });
  for (const question of questions) for (const side of sides) engine.addRule(ruleOf(question, side));
  const { results, failureResults } = await engine.run();
  const answers = new Map<string, Partial<Record<Side, boolean>>>();
  let count = 0;
  for (const result of [...results, ...failureResults]) {
    const event = result.event as { type: Side; params: { id: string } } | undefined;
    if (event === undefined) throw new Error("a rule came back without its name");
    const answer = answers.get(event.params.id) ?? {};
    answer[event.type] = result.result === true;
    answers.set(event.params.id, answer);
    count += 1;
  }
  if (count !== questions.length * sides.length || answers.size !== questions.length) {
    throw new Error(`${questions.length * sides.length} questions were put and ${count} answered`);
  }
  return answers as Answers;
}
