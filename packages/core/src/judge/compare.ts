import type { Operator } from "@trialfit/rules";
import type { Fact } from "./Fact.ts";

/**
 * From which side a comparison is read: `surely` over the whole band, `possibly` somewhere in it, `nominally` at
 * the nominal value. A missing fact is possible and never sure.
 */
export const sides = ["surely", "possibly", "nominally"] as const;
export type Side = (typeof sides)[number];

/** What a fact is compared with: another fact, or a list of words. */
export type Operand = Fact | { readonly kind: "words"; readonly words: readonly string[] };

type Compare = (side: Side, left: Fact, right: Operand) => boolean;

function numbers(holds: (a: number, b: number) => boolean, wants: "high" | "low"): Compare {
  return (side, left, right) => {
    if (left.kind !== "band" || right.kind !== "band") return side === "possibly";
    if (side === "nominally") return holds(left.nominal, right.nominal);
    const favourable = side === "possibly";
    const a = (wants === "high") === favourable ? left.high : left.low;
    const b = (wants === "high") === favourable ? right.low : right.high;
    return holds(a, b);
  };
}

function words(contained: boolean): Compare {
  return (side, left, right) => {
    if (left.kind !== "word" || right.kind !== "words") return side === "possibly";
    return right.words.includes(left.word) === contained;
  };
}

/** Every operator of a rule file, read from any side. */
export const compare: Readonly<Record<Operator, Compare>> = {
  greaterThan: numbers((a, b) => a > b, "high"),
  greaterThanInclusive: numbers((a, b) => a >= b, "high"),
  lessThan: numbers((a, b) => a < b, "low"),
  lessThanInclusive: numbers((a, b) => a <= b, "low"),
  equal: words(true),
  in: words(true),
  notEqual: words(false),
  notIn: words(false),
};

/** The operator that is true just when the other is false, for conditions without `not`. */
export const negated: Readonly<Record<Operator, Operator>> = {
  greaterThan: "lessThanInclusive",
  greaterThanInclusive: "lessThan",
  lessThan: "greaterThanInclusive",
  lessThanInclusive: "greaterThan",
  equal: "notEqual",
  notEqual: "equal",
  in: "notIn",
  notIn: "in",
};

export function isNumeric(operator: Operator): boolean {
  return operator.startsWith("greater") || operator.startsWith("less");
}
