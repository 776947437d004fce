import type { VerdictWord } from "trialfit";
import type { CountWord } from "../protocol.ts";

/** How each count is marked: with the mark of a verdict, or for those that wait for a person in words. */
export const marks = {
  pending: "pending",
  fails: "fails",
  open: "open",
  unknown: "unknown",
  toConfirm: undefined,
  holds: "holds",
  notApplicable: "not-applicable",
} as const satisfies Record<CountWord, VerdictWord | "pending" | undefined>;
