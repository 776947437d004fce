import { type Weight, weights } from "@trialfit/rules";
import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { VerdictWord } from "../../judge/Verdict.ts";
import type { Broken } from "./Remedy.ts";
import type { Standing } from "./Standing.ts";

/** What a change does to every rule but the one that it is made for. */
export interface Outcome {
  /** Empty where nothing breaks; not always all that breaks, for the search ends where something surely does. */
  readonly broken: readonly Broken[];
  /** Rules that did not hold and do now; where the search ended with something broken, none. */
  readonly settled: readonly string[];
}

/** A rule with what it says of the build as it is. */
export interface Judgement {
  readonly rule: CompiledRule;
  readonly weight: Weight;
  readonly word: VerdictWord;
  /** Whether one of its quantities takes a search: those are looked at last. */
  readonly dear: boolean;
}

export const heaviestFirst = Object.keys(weights) as readonly Weight[];

/** Whether something weighs as much as another, or more. */
export const weighs = (one: Weight, other: Weight): boolean =>
  heaviestFirst.indexOf(one) <= heaviestFirst.indexOf(other);

/** What holds must go on holding or no longer matter, and nothing may begin to fail. */
function isBroken(before: VerdictWord, after: VerdictWord): boolean {
  if (before === "holds") return after !== "holds" && after !== "not-applicable";
  return after === "fails" && before !== "fails";
}

/** What holds, and would not even at the nominal values, surely breaks: that is quickly seen. */
export function brokenNominally(there: Standing, judgements: readonly Judgement[]): readonly Broken[] {
  return judgements
    .filter(({ rule, word }) => word === "holds" && isBroken(word, there.nominalWord(rule)))
    .map(({ rule, weight }) => ({ rule: rule.file.id, weight }));
}

/** Whether a finding is none any more. */
const isSettled = (before: VerdictWord, after: VerdictWord): boolean =>
  after === "holds" && (before === "fails" || before === "open");

/** All that a change breaks, with what it says then, and all that it settles. */
export function* allChanged(there: Standing, judgements: readonly Judgement[]): Steps<Outcome> {
  const broken: Broken[] = [];
  const settled: string[] = [];
  for (const { rule, word, weight } of judgements) {
    const after = yield* there.word(rule);
    if (isBroken(word, after)) broken.push({ rule: rule.file.id, weight, becomes: after });
    if (isSettled(word, after)) settled.push(rule.file.id);
  }
  return { broken, settled };
}

/**
 * What a change of one dimension does to rules that rest on it.
 * @param there the build with the change
 * @param judgements rules that rest on the dimension
 */
export function* consequencesOf(there: Standing, judgements: readonly Judgement[]): Steps<Outcome> {
  const atOnce = brokenNominally(there, judgements);
  yield;
  if (atOnce.length > 0) return { broken: atOnce, settled: [] };
  const settled: string[] = [];
  for (const dear of [false, true]) {
    const broken: Broken[] = [];
    for (const { rule, word, weight } of judgements.filter((one) => one.dear === dear)) {
      const after = yield* there.word(rule);
      if (isBroken(word, after)) {
        broken.push({ rule: rule.file.id, weight, becomes: after });
        if (dear) break;
      }
      if (isSettled(word, after)) settled.push(rule.file.id);
    }
    if (broken.length > 0) return { broken, settled: [] };
  }
  return { broken: [], settled };
}
