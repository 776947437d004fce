import type { Weight } from "@trialfit/rules";
import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { Lookup } from "../../judge/decide.ts";
import type { Judgement } from "./Consequences.ts";
import type { Worsened } from "./Remedy.ts";
import type { Standing } from "./Standing.ts";
import { growthOf, type Shortfalls, shortfallsOf, worstShortfalls } from "./shortfallsOf.ts";

const shortAt = (rule: CompiledRule, places: readonly Lookup[]): Shortfalls =>
  worstShortfalls(places.map((known) => shortfallsOf(rule, known)));

/** JSON has no infinity: of what lacked nothing before there is no share. */
const worse = (rule: CompiledRule, weight: Weight, verdict: Worsened["verdict"], by: number): Worsened => ({
  rule: rule.file.id,
  weight,
  verdict,
  ...(Number.isFinite(by) ? { by } : {}),
});

/**
 * What fails or is open already and comes out further from holding by a change, over the whole band; of an open rule
 * also that it is no longer known how it stands. A rule that begins to fail is broken, and not meant here.
 * @param before the build as it is
 * @param after with the change
 * @param judgements rules that rest on what is changed, but for the one that the change is made for
 */
export function* worsenedBy(
  before: Standing,
  after: Standing,
  judgements: readonly Judgement[],
): Steps<readonly Worsened[]> {
  const worsened: Worsened[] = [];
  for (const { rule, word, weight } of judgements) {
    if (word !== "fails" && word !== "open") continue;
    const now = yield* after.word(rule);
    const by =
      now === word
        ? growthOf(shortAt(rule, yield* before.places(rule)), shortAt(rule, yield* after.places(rule)))
        : word === "open" && now === "unknown"
          ? Number.POSITIVE_INFINITY
          : 0;
    if (by > 0) worsened.push(worse(rule, weight, word, by));
  }
  return worsened;
}

/** The same at the nominal values alone: quickly seen, where the change is no remedy yet. */
export function worsenedNominally(
  before: Standing,
  after: Standing,
  judgements: readonly Judgement[],
): readonly Worsened[] {
  return judgements.flatMap(({ rule, word, weight }) => {
    if (word !== "fails" && word !== "open") return [];
    if (after.nominalWord(rule) !== "fails") return [];
    const by = growthOf(shortAt(rule, before.nominally(rule)), shortAt(rule, after.nominally(rule)));
    return by > 0 ? [worse(rule, weight, word, by)] : [];
  });
}
