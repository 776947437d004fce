import type { RuleFile } from "@trialfit/rules";

/** Ways in which a rule is changed to see whether its examples notice. */
export const mutantKinds = {
  "limit-moved": "a limit, or the value of a case, moved by one unit of its second digit",
  "number-moved": "a number in a comparison moved by one unit of its second digit",
  "operator-turned": "a comparison turned round",
  "edge-moved": "a comparison that counts the limit itself, or no longer does",
  "member-dropped": "one of several conditions left out",
  "not-dropped": "a condition no longer negated",
  "when-dropped": "the rule taken as always relevant",
  "case-dropped": "a case of a limit left out",
  "cases-swapped": "two neighbouring cases of a limit in the other order",
  "word-dropped": "a word of a list left out",
  "word-added": "one more word taken in a choice",
} as const;
export type MutantKind = keyof typeof mutantKinds;

/** A rule with one thing changed: an example must tell it from the rule itself. */
export interface Mutant {
  readonly kind: MutantKind;
  /** Where in the rule file the change is. */
  readonly path: readonly (string | number)[];
  /** The change, for people: `0.8 mm read as 0.79 mm`. */
  readonly change: string;
  readonly file: RuleFile;
}
