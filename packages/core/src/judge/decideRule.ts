import type { CompiledRule } from "./CompiledRule.ts";
import { type Decision, decide, decideLimit, type Lookup } from "./decide.ts";
import { namedMissing } from "./namedMissing.ts";
import type { VerdictWord } from "./Verdict.ts";

/** What both sides of the conditions of a rule come to. */
export interface Sides {
  readonly surely: boolean;
  readonly possibly: boolean;
}

/** The verdict from both sides of `when` and `requires`; `lacking` is whether inputs or values are missing. */
export function wordFor(when: Sides, requires: Sides, lacking: boolean): VerdictWord {
  if (!when.possibly) return "not-applicable";
  if (requires.surely) return "holds";
  if (when.surely && !requires.possibly) return "fails";
  return lacking ? "unknown" : "open";
}

const ALWAYS: Decision = { surely: true, possibly: true, missing: [], reasons: [] };

/** Adds the limits of a rule to what can be looked up. */
export function withLimits(rule: CompiledRule, lookup: Lookup): Lookup {
  const limits = new Map(rule.limits.map((limit) => [limit.fact, decideLimit(limit, lookup)] as const));
  return (fact) => limits.get(fact) ?? lookup(fact);
}

/** A verdict with, for `unknown`, the paths of the inputs that would settle it. */
export interface Decided {
  readonly verdict: VerdictWord;
  readonly missing: readonly string[];
}

/**
 * The verdict of one rule by walking its conditions, without json-rules-engine, with what is missing. A
 * differential test holds it to `judgeAll`.
 */
export function decideWithMissing(rule: CompiledRule, lookup: Lookup): Decided {
  const scoped = withLimits(rule, lookup);
  const when = rule.when === undefined ? ALWAYS : decide(rule.when, scoped);
  const requires = decide(rule.requires, scoped);
  const lacking = [when, requires].some(({ missing, reasons }) => missing.length + reasons.length > 0);
  const verdict = wordFor(when, requires, lacking);
  const missing = verdict === "unknown" ? namedMissing([...when.missing, ...requires.missing]) : [];
  return { verdict, missing };
}

/** The verdict of one rule alone: for searches that ask many times. */
export function decideRule(rule: CompiledRule, lookup: Lookup): VerdictWord {
  return decideWithMissing(rule, lookup).verdict;
}
