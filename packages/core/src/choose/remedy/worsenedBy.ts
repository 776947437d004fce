import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { Lookup } from "../../judge/decide.ts";
import type { Judgement } from "./Consequences.ts";
import type { Worsened } from "./Remedy.ts";
import type { Standing } from "./Standing.ts";
import { type Growth, growthOf, type Shortfalls, shortfallsOf, worstShortfalls } from "./shortfallsOf.ts";

const NO_LONGER_KNOWN: Growth = { by: Number.POSITIVE_INFINITY, slight: false };

const shortAt = (rule: CompiledRule, places: readonly Lookup[]): Shortfalls =>
  worstShortfalls(places.map((known) => shortfallsOf(rule, known)));

/** JSON has no infinity: of what lacked nothing before there is no share. */
function worse({ rule, weight, word }: Judgement, growth: Growth | undefined): readonly Worsened[] {
  if (growth === undefined || (word !== "fails" && word !== "open")) return [];
  const { by, slight } = growth;
  return [{ rule: rule.file.id, weight, verdict: word, ...(Number.isFinite(by) ? { by } : {}), slight }];
}

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
  for (const one of judgements) {
    const { rule, word } = one;
    if (word !== "fails" && word !== "open") continue;
    const now = yield* after.word(rule);
    const growth =
      now === word
        ? growthOf(shortAt(rule, yield* before.places(rule)), shortAt(rule, yield* after.places(rule)))
        : word === "open" && now === "unknown"
          ? NO_LONGER_KNOWN
          : undefined;
    worsened.push(...worse(one, growth));
  }
  return worsened;
}

/** The same at the nominal values alone: quickly seen, where the change is no remedy yet. */
export function worsenedNominally(
  before: Standing,
  after: Standing,
  judgements: readonly Judgement[],
): readonly Worsened[] {
  return judgements.flatMap((one) => {
    const { rule, word } = one;
    if (word !== "fails" && word !== "open") return [];
    if (after.nominalWord(rule) !== "fails") return [];
    return worse(one, growthOf(shortAt(rule, before.nominally(rule)), shortAt(rule, after.nominally(rule))));
  });
}
