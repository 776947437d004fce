import type { Condition } from "@trialfit/rules";
import { factType } from "../judge/factCatalog.ts";
import { operatorWords } from "./describeComparison.ts";

const NEGATED_WORDS = { equal: "is", notEqual: "is not", in: "is one of", notIn: "is none of" } as const;

function leaf(condition: Extract<Condition, { fact: string }>): string {
  const { fact, operator, value } = condition;
  const label = factType(fact)?.label ?? fact;
  const verb =
    operator in NEGATED_WORDS
      ? NEGATED_WORDS[operator as keyof typeof NEGATED_WORDS]
      : `is ${operatorWords[operator]}`;
  const against = Array.isArray(value)
    ? value.join(", ")
    : typeof value === "string"
      ? value
      : value.fact.startsWith("limit.")
        ? `the limit "${value.fact.slice("limit.".length)}"`
        : (factType(value.fact)?.label.toLowerCase() ?? value.fact);
  return `${label.charAt(0).toLowerCase()}${label.slice(1)} ${verb} ${against}`;
}

/** A condition tree of a rule file in words. */
export function describeCondition(condition: Condition): string {
  if ("fact" in condition) return leaf(condition);
  if ("not" in condition) return `not (${describeCondition(condition.not)})`;
  const [children, joint] = "all" in condition ? [condition.all, " and "] : [condition.any, " or "];
  return children
    .map((child) => ("fact" in child ? leaf(child) : `(${describeCondition(child)})`))
    .join(joint);
}
