import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { Projection } from "./Projection.ts";
import type { Remembered } from "./Remembered.ts";
import type { RuleOutcome } from "./RuleAsked.ts";

/** A rule by those of its facts that some choice of kinds settles. */
export interface Question {
  readonly rule: CompiledRule;
  /** Number of the rule. */
  readonly index: number;
  /** Whether all its facts are settled: then what it says is what an evaluation of the whole build says. */
  readonly whole: boolean;
  /** Whether it is an aim of the build, judged at nominal values, and no rule of the catalog. */
  readonly isAim: boolean;
  /** Whether any of its facts is searched inside of the tolerances: some milliseconds, against some microseconds. */
  readonly dear: boolean;
  /** Kinds on which it rests, ascending. */
  readonly kinds: readonly number[];
  readonly facts: ReadonlySet<string>;
  readonly projection: Projection;
  readonly memory: Remembered<RuleOutcome>;
}
