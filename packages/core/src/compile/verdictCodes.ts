import type { VerdictWord } from "../judge/Verdict.ts";

/** Verdicts as small numbers: the code is the place in the list. */
export const verdictCodes = [
  "not-applicable",
  "holds",
  "open",
  "unknown",
  "fails",
] as const satisfies readonly VerdictWord[];

/** A verdict as a number: 0 not applicable, 1 holds, 2 open, 3 unknown, 4 fails. */
export const VerdictCode = {
  notApplicable: 0,
  holds: 1,
  open: 2,
  unknown: 3,
  fails: 4,
} as const;
