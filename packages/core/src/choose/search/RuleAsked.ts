import { deriveAll } from "../../derive/deriveAll.ts";
import { placesOf } from "../../derive/places.ts";
import type { Catalog } from "../../derive/rootsOf.ts";
import { type CompiledRule, leavesOf } from "../../judge/CompiledRule.ts";
import { type Decision, decide, type Lookup } from "../../judge/decide.ts";
import { withLimits, wordFor } from "../../judge/decideRule.ts";
import type { Fact } from "../../judge/Fact.ts";
import { lookupOf } from "../../judge/lookupOf.ts";
import type { VerdictWord } from "../../judge/Verdict.ts";
import { whereJudged } from "../../judge/whereJudged.ts";
import { worstFirst } from "../../judge/worstPlace.ts";
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

/** Facts that the conditions of a rule and the cases of its limits name: its verdict rests on no others. */
export function askedFacts(rule: CompiledRule): readonly string[] {
  const limits = new Set(rule.limits.map(({ fact }) => fact));
  const named = [
    rule.when,
    rule.requires,
    ...rule.limits.flatMap(({ cases }) => cases.map(({ when }) => when)),
  ]
    .flatMap(leavesOf)
    .flatMap(({ fact, value }) => (value.kind === "fact" ? [fact, value.fact] : [fact]));
  return [...new Set(named)].filter((fact) => !limits.has(fact)).sort();
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
  const { whole, placed } = whereJudged(values, [rule], catalog);
  const grounds =
    placed.length === 0
      ? [whole]
      : placed.flatMap(({ kind }) => placesOf(kind, values).map((place) => place.values));
  const wanted = askedFacts(rule).filter((fact) => catalog.has(fact));
  const outcomes = grounds.map((here) =>
    askRule(rule, seen(lookupOf(here, deriveAll(here, catalog, wanted)))),
  );
  const word = worstFirst.find((one) => outcomes.some((outcome) => outcome.word === one)) ?? "not-applicable";
  const worst = outcomes.filter((outcome) => outcome.word === word);
  return {
    word,
    toConfirm: worst.length > 0 && worst.every(({ toConfirm }) => toConfirm),
    margin: outcomes.reduce((least, { margin }) => Math.min(least, margin), Infinity),
  };
}
