import type { Operator } from "@trialfit/rules";

/** What a rule says of a build. */
export const verdictWords = {
  holds: "holds over the whole band of tolerances",
  fails: "fails over the whole band of tolerances",
  open: "depends on where in the tolerances the parts lie",
  unknown: "cannot be judged: inputs are missing",
  "not-applicable": "is not relevant to this build",
} as const;
export type VerdictWord = keyof typeof verdictWords;

/** A number with its band as it stood in a comparison, SI. */
export interface TraceBand {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** One comparison of a rule on this build: the trace of its verdict. */
export interface Comparison {
  /** `when` a rule is relevant, or what it `requires`. */
  readonly in: "when" | "requires";
  /** True for one of several ways to satisfy the rule: another may do instead. */
  readonly alternative: boolean;
  readonly fact: string;
  readonly label: string;
  readonly operator: Operator;
  readonly state: "sure" | "possible" | "no" | "missing";
  /** Unit in which both sides are shown; absent for words. */
  readonly unit?: string;
  readonly decimals?: number;
  readonly value?: TraceBand | string;
  readonly against?: TraceBand | readonly string[];
  /** Name of the limit or fact on the other side, when it has one. */
  readonly againstName?: string;
  /** Distance from the limit, positive on the good side, over the band; only for numbers. */
  readonly margin?: TraceBand;
}

/** The verdict of one rule, with everything that it rests on. */
export interface Verdict {
  readonly rule: string;
  readonly verdict: VerdictWord;
  /** For `open`: whether it holds at the nominal values. */
  readonly nominally: boolean;
  /** For `unknown`: paths of the inputs that would settle it. */
  readonly missing: readonly string[];
  /** For `unknown`: why a value cannot be computed from inputs that are there. */
  readonly reasons: readonly string[];
  readonly comparisons: readonly Comparison[];
  /** For `open`: dimensions that hold on paper only, at a stage by which they are to be measured. */
  readonly unmeasured?: readonly string[];
}
