/** Comparisons of numbers look at the whole band; comparisons of words at the word. */
export const operators = [
  "lessThan",
  "lessThanInclusive",
  "greaterThan",
  "greaterThanInclusive",
  "equal",
  "notEqual",
  "in",
  "notIn",
] as const;
export type Operator = (typeof operators)[number];
