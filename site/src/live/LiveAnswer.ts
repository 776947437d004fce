import type { VerdictView } from "../data/verdictView.ts";

/** What is wrong with an entry. */
export interface LiveProblem {
  /** Path of the field; empty where it is the build as a whole. */
  readonly path: string;
  /** What people call it. */
  readonly label: string;
  readonly text: string;
}

/** The verdict on the changed build, or why it cannot be read. */
export type LiveAnswer = { readonly number: number } & (
  | { readonly view: VerdictView }
  | { readonly problems: readonly LiveProblem[] }
);
