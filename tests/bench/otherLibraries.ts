import { compileExpression } from "filtrex";
import { LogicEngine } from "json-logic-engine";
import { Engine, type NestedCondition } from "json-rules-engine";
import type { CompiledRule } from "trialfit";
import { VerdictCode } from "trialfit";

type Node = CompiledRule["requires"];
type Leaf = Extract<Node, { kind: "leaf" }>;

/** One build at single values: numbers in SI and words by the name of the fact, nothing missing. */
export type PlainFacts = Readonly<Record<string, number | string>>;

/** Judges one build; the codes of its verdicts in the order of the rules. */
export type PlainJudge = (facts: PlainFacts) => Uint8Array | Promise<Uint8Array>;

const isWord = ({ value }: Leaf) => value.kind === "words";
const wordsOf = ({ value }: Leaf) => (value.kind === "words" ? value.words : []);
const isContained = ({ operator }: Leaf) => operator === "equal" || operator === "in";
const codeOf = (relevant: boolean, met: boolean) =>
  relevant ? (met ? VerdictCode.holds : VerdictCode.fails) : VerdictCode.notApplicable;

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

const LOGIC = {
  greaterThan: ">",
  greaterThanInclusive: ">=",
  lessThan: "<",
  lessThanInclusive: "<=",
} as const;

/** JSON logic: each rule one expression that gives the code of its verdict. @param compiled to functions beforehand */
export function jsonLogic(rules: readonly CompiledRule[], compiled: boolean): PlainJudge {
  const engine = new LogicEngine();
  const at = (fact: string) => ({ var: fact.replaceAll(/[^A-Za-z0-9]/g, "_") });
  const logic = (node: Node, rule: CompiledRule): unknown => {
    if (node.kind !== "leaf")
      return { [node.kind === "all" ? "and" : "or"]: node.children.map((child) => logic(child, rule)) };
    if (isWord(node)) {
      const among = { in: [at(node.fact), { preserve: [...wordsOf(node)] }] };
      return isContained(node) ? among : { "!": among };
    }
    const sign = LOGIC[node.operator as keyof typeof LOGIC];
    const compare = (other: unknown) => ({ [sign]: [at(node.fact), other] });
    if (node.value.kind === "number") return compare(node.value.value);
    const name = node.value.kind === "fact" ? node.value.fact : "";
    const limit = rule.limits.find(({ fact }) => fact === name);
    if (limit === undefined) return compare(at(name));
    // Its compiler fails on an `if` on the right of a comparison: the comparison goes into the cases.
    const cases = limit.cases.flatMap((one) => [logic(one.when, rule), compare(one.value)]);
    return cases.length === 0 ? compare(limit.value) : { if: [...cases, compare(limit.value)] };
  };
  const trees = rules.map((rule) => {
    const met = { if: [logic(rule.requires, rule), VerdictCode.holds, VerdictCode.fails] };
    return rule.when === undefined ? met : { if: [logic(rule.when, rule), met, VerdictCode.notApplicable] };
  });
  const functions = trees.map((tree): ((data: unknown) => unknown) =>
    compiled ? (engine.build(tree as never) as never) : (data) => engine.run(tree as never, data),
  );
  return (facts) => {
    const data = underscored(facts);
    return Uint8Array.from(functions, (run) => Number(run(data)));
  };
}

const renamed = new WeakMap<PlainFacts, PlainFacts>();

/** The same facts under names without a point, which these libraries take for a path: made once, not counted. */
export function underscored(facts: PlainFacts): PlainFacts {
  let known = renamed.get(facts);
  if (known === undefined) {
    known = Object.fromEntries(
      Object.entries(facts).map(([name, value]) => [name.replaceAll(/[^A-Za-z0-9]/g, "_"), value]),
    );
    renamed.set(facts, known);
  }
  return known;
}

/** An expression library: each rule one compiled expression that gives the code of its verdict. */
export function expressions(rules: readonly CompiledRule[]): PlainJudge {
  const at = (fact: string) => fact.replaceAll(/[^A-Za-z0-9]/g, "_");
  const number = (value: number) => {
    const plain = Math.abs(value) < 1e-6 && value !== 0 ? value.toFixed(20) : String(value);
    return value < 0 ? `(0 - ${plain.slice(1)})` : plain.includes("e") ? BigInt(value).toString() : plain;
  };
  const text = (node: Node, rule: CompiledRule): string => {
    if (node.kind !== "leaf")
      return `(${node.children.map((child) => text(child, rule)).join(node.kind === "all" ? " and " : " or ")})`;
    if (isWord(node)) {
      const sign = isContained(node) ? "==" : "!=";
      const tests = wordsOf(node).map((word) => `(${at(node.fact)} ${sign} "${word}")`);
      return `(${tests.join(isContained(node) ? " or " : " and ")})`;
    }
    return `(${at(node.fact)} ${LOGIC[node.operator as keyof typeof LOGIC]} ${against(node, rule)})`;
  };
  const against = ({ value }: Leaf, rule: CompiledRule): string => {
    if (value.kind === "number") return number(value.value);
    const name = value.kind === "fact" ? value.fact : "";
    const limit = rule.limits.find(({ fact }) => fact === name);
    if (limit === undefined) return at(name);
    return limit.cases.reduceRight(
      (otherwise, one) => `(if ${text(one.when, rule)} then ${number(one.value)} else ${otherwise})`,
      number(limit.value),
    );
  };
  const functions = rules.map((rule) => {
    const met = `(if ${text(rule.requires, rule)} then ${VerdictCode.holds} else ${VerdictCode.fails})`;
    const whole =
      rule.when === undefined
        ? met
        : `if ${text(rule.when, rule)} then ${met} else ${VerdictCode.notApplicable}`;
    return compileExpression(whole);
  });
  return (facts) => {
    const data = underscored(facts);
    return Uint8Array.from(functions, (run) => Number(run(data)));
  };
}
