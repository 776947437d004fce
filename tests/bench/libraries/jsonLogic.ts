import { LogicEngine } from "json-logic-engine";
import { type CompiledRule, VerdictCode } from "trialfit";
import {
  isContained,
  isWord,
  LOGIC,
  type Node,
  type PlainJudge,
  underscored,
  wordsOf,
} from "./PlainJudge.ts";

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
