/** Kinds of flaw that keep a rule file from being judged, and what each is about. */
export const issueKinds = {
  "unknown-fact": "a name that is no field and no quantity",
  "wrong-operator": "a number compared as a word, or a word as a number",
  "nominal-only": "a quantity that is shown but cannot be judged",
  "wrong-unit": "a unit that does not fit what is measured",
  "no-unit": "a number without its unit",
  "not-a-number": "a text that is no number",
  "unknown-word": "a word that the field never has",
  "limit-undeclared": "a limit that is used but not declared",
  "limit-unused": "a limit that is declared but not used",
  "limit-in-case": "a limit in the condition of a case",
  "range-reversed": "a range that runs backwards",
  "outside-range": "a limit or case outside its own range",
  "confirm-undeclared": "asking for what a person saw, without saying what to look at",
  "confirm-unused": "saying what to look at, without asking for what was seen",
  "phase-undeclared": "what is seen while the engine is run, without saying when in the first run",
  "phase-unused": "a time in the first run, for a rule that is not judged while the engine is run",
  "unknown-name-in-text": "a name in braces that prints nothing",
  "braces-without-name": "braces in a text that hold no name, or stand where nothing is printed",
} as const;
export type IssueKind = keyof typeof issueKinds;

/** One flaw of a rule file, at its place in the data. */
export interface RuleIssue<Kind extends string = IssueKind> {
  readonly kind: Kind;
  readonly path: readonly (string | number)[];
  /** True when the key itself is at fault, not its value. */
  readonly key?: boolean;
  readonly found: string;
  readonly expected: string;
  /** The nearest known word, when the found one is unknown. */
  readonly didYouMean?: string;
}

/** One line for people: place in the data, found, expected. */
export function formatIssue({ path, found, expected, didYouMean }: Omit<RuleIssue<string>, "kind">): string {
  const hint = didYouMean === undefined ? "" : `did you mean "${didYouMean}"? `;
  return `${path.join(".")}: found ${found}; ${hint}expected ${expected}`;
}
