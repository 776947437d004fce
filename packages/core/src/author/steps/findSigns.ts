import type { Operator } from "@trialfit/rules";
import { lineOf } from "../../read/lineOf.ts";
import type { RuleProblem } from "../RuleProblem.ts";

/** Signs of mathematics that authors write where the word of an operator belongs. */
const words: Readonly<Record<string, Operator>> = {
  "<": "lessThan",
  "<=": "lessThanInclusive",
  "=<": "lessThanInclusive",
  "≤": "lessThanInclusive",
  ">": "greaterThan",
  ">=": "greaterThanInclusive",
  "=>": "greaterThanInclusive",
  "≥": "greaterThanInclusive",
  "=": "equal",
  "==": "equal",
  "!=": "notEqual",
  "<>": "notEqual",
  "≠": "notEqual",
};

const SIGN = /(?<=(?:^|[\s{,])operator:[^\S\n]*["']?)[<>=!≤≥≠]{1,2}(?=["']?[^\S\n]*(?:[,}\n#]|$))/gm;

/**
 * Operators written as signs. They are looked for in the text itself: `>=` without quotes is no YAML, and `!=` reads
 * as nothing, so that what a parser says of them helps nobody.
 */
export function findSigns(text: string, file: string): readonly RuleProblem[] {
  return [...text.matchAll(SIGN)].flatMap(({ 0: sign, index }): readonly RuleProblem[] => {
    const operator = words[sign];
    if (operator === undefined) return [];
    return [
      {
        kind: "wrong-word",
        weight: "error",
        file,
        ...lineOf(text, index),
        field: "operator",
        found: `the sign ${sign}`,
        expected: `its word: ${operator}`,
      },
    ];
  });
}
