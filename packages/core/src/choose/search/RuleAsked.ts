import type { Catalog } from "../../derive/rootsOf.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import { type Decision, decide, type Lookup } from "../../judge/decide.ts";
import { withLimits, wordFor } from "../../judge/decideRule.ts";
import type { Fact } from "../../judge/Fact.ts";
import { groundsOf } from "../../judge/groundsOf.ts";
import type { VerdictWord } from "../../judge/Verdict.ts";
import { worstWord } from "../../judge/worstPlace.ts";
import { confirmationPath } from "../../read/confirmations.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import { relativeMargin } from "./relativeMargin.ts";

/** What a rule says of a choice of parts. */
export interface RuleOutcome {
  readonly word: VerdictWord;
  /** For `unknown`: nothing is missing but what a person has to look at. */
  readonly toConfirm: boolean;
  /**
   * How far what it requires is from its limits at the worst end of the bands (`relativeMargin`); +∞ where it is not
   * applicable, NaN where a fact that it rests on is missing.
   */
  readonly margin: number;
}

/** A fact of a part that is not chosen yet. */
export const NOT_CHOSEN: Fact = { kind: "missing", missing: ["a part that is not chosen yet"] };

const ALWAYS: Decision = { surely: true, possibly: true, missing: [], reasons: [] };

/** What a rule says by some facts. */
export function askRule(rule: CompiledRule, lookup: Lookup): RuleOutcome {
  const scoped = withLimits(rule, lookup);
  const sides = [
    rule.when === undefined ? ALWAYS : decide(rule.when, scoped),
    decide(rule.requires, scoped),
  ] as const;
  const [missing, reasons] = [sides.flatMap((one) => one.missing), sides.flatMap((one) => one.reasons)];
  const word = wordFor(...sides, missing.length + reasons.length > 0);
  const own = confirmationPath(rule.file.id);
  const toConfirm = word === "unknown" && reasons.length === 0 && missing.every((path) => path === own);
  const margin = word === "not-applicable" ? Infinity : relativeMargin(rule.requires, scoped);
  return { word, toConfirm, margin };
}

/**
 * What a rule says of a whole build with readings by position, at the worst place, as an evaluation finds it.
 * @param values fields of the build, defaults filled in
 * @param seen how the rule looks at the facts
 */
export function askRuleAtPlaces(
  rule: CompiledRule,
  values: ReadonlyMap<string, FieldValue>,
  catalog: Catalog,
  seen: (lookup: Lookup) => Lookup,
): RuleOutcome {
  const outcomes = groundsOf(rule, values, catalog).map((ground) => askRule(rule, seen(ground)));
  const word = worstWord(outcomes.map((outcome) => outcome.word));
  const worst = outcomes.filter((outcome) => outcome.word === word);
  return {
    word,
    toConfirm: worst.length > 0 && worst.every(({ toConfirm }) => toConfirm),
    margin: outcomes.reduce((least, { margin }) => Math.min(least, margin), Infinity),
  };
}
