import { compileExpression } from "filtrex";
import { type CompiledRule, VerdictCode } from "trialfit";
import {
  isContained,
  isWord,
  type Leaf,
  LOGIC,
  type Node,
  type PlainJudge,
  underscored,
  wordsOf,
} from "./PlainJudge.ts";

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
