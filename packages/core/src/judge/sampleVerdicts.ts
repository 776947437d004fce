import { placesOf } from "../derive/places.ts";
import type { Catalog } from "../derive/rootsOf.ts";
import { finish, type Steps } from "../derive/Steps.ts";
import { type Sampled, summarise } from "../derive/statistics/summarise.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { CompiledRule } from "./CompiledRule.ts";
import type { Lookup } from "./decide.ts";
import { decideRule } from "./decideRule.ts";
import { DrawnFacts } from "./drawnFacts.ts";
import type { VerdictWord } from "./Verdict.ts";
import { whereJudged } from "./whereJudged.ts";

/** How many engines to draw, and from where. */
export interface Drawing {
  /** Engines, from 1 to {@link MOST_DRAWS}. */
  readonly draws: number;
  /** Whole number from 0 to 2³² − 1; the same one gives the same engines. */
  readonly seed: number;
}

/** Engines that may be drawn at once. */
export const MOST_DRAWS = 1_000_000;

/** In how many of the drawn engines a rule holds. */
export interface HoldsIn {
  /** Part of the engines that the rule applies to, 0 to 1. One in which it cannot be judged does not count as held. */
  readonly share: number;
  /** Drawn engines that the rule applies to. */
  readonly engines: number;
}

/** What drawn engines say of the quantities and the rules. */
export interface Samples {
  readonly quantities: ReadonlyMap<string, Sampled>;
  /** By the rule’s id; only rules that apply to some engine and lack no input. */
  readonly rules: ReadonlyMap<string, HoldsIn>;
}

/** @throws RangeError when the numbers are not whole or lie outside of their ranges */
export function checkDrawing({ draws, seed }: Drawing): void {
  if (!Number.isInteger(draws) || draws < 1 || draws > MOST_DRAWS)
    throw new RangeError(`draws must be a whole number from 1 to ${MOST_DRAWS}, not ${draws}`);
  if (!Number.isInteger(seed) || seed < 0 || seed >= 2 ** 32)
    throw new RangeError(`the seed must be a whole number from 0 to ${2 ** 32 - 1}, not ${seed}`);
}

/** What a rule says of an engine by what it says at its places: a failure at one is one of the engine. */
function wordOf(words: readonly VerdictWord[]): VerdictWord {
  const applies = words.filter((word) => word !== "not-applicable");
  if (applies.length === 0) return "not-applicable";
  return applies.find((word) => word !== "holds") ?? "holds";
}

class Tally {
  private readonly words = new Map<string, VerdictWord[]>();

  add(rule: CompiledRule, word: VerdictWord): void {
    const words = this.words.get(rule.file.id);
    if (words === undefined) this.words.set(rule.file.id, [word]);
    else words.push(word);
  }

  holdsIn(): ReadonlyMap<string, HoldsIn> {
    return new Map(
      [...this.words].flatMap(([id, words]) => {
        const applies = words.filter((word) => word !== "not-applicable");
        const held = applies.filter((word) => word === "holds").length;
        return applies.length === 0
          ? []
          : [[id, { share: held / applies.length, engines: applies.length }] as const];
      }),
    );
  }
}

/**
 * Draws engines within the tolerances and judges each: how often each rule holds, and how the quantities scatter. A
 * rule that rests on dimensions measured place by place holds in an engine when it holds at each of its places.
 * These numbers stand beside the verdicts and never change one.
 * @param values fields of the build, defaults filled in
 * @param wanted quantities to summarise, of the engine as a whole
 * @throws RangeError when the drawing is not as {@link Drawing} says
 */
export function* sampleInSteps(
  values: ReadonlyMap<string, FieldValue>,
  rules: readonly CompiledRule[],
  catalog: Catalog,
  wanted: Iterable<string>,
  drawing: Drawing,
): Steps<Samples> {
  checkDrawing(drawing);
  const { whole, common, placed, differs } = whereJudged(values, rules, catalog);
  const engine = new DrawnFacts(values, whole, catalog);
  const stands = placed.map(({ kind, rules: here }) => ({
    here,
    places: placesOf(kind, values).map((place) => new DrawnFacts(values, whole, catalog, place)),
  }));
  const numbers = new Map(
    [...wanted].filter((id) => catalog.get(id)?.nominalOnly === false).map((id) => [id, [] as number[]]),
  );
  const tally = new Tally();
  for (let number = 0; number < drawing.draws; number += 1) {
    const lookup = engine.engine(drawing.seed, number);
    for (const [id, list] of numbers) {
      const fact = lookup(id);
      if (fact.kind === "band") list.push(fact.nominal);
    }
    for (const rule of common) tally.add(rule, decideRule(rule, lookup));
    for (const { here, places } of stands) {
      const lookups = places.map((place): Lookup => {
        const own = place.engine(drawing.seed, number);
        return (name) => (differs(name) ? own(name) : lookup(name));
      });
      for (const rule of here) tally.add(rule, wordOf(lookups.map((one) => decideRule(rule, one))));
    }
    yield;
  }
  return {
    quantities: new Map(
      [...numbers].flatMap(([id, list]) => {
        const sampled = summarise(list);
        return sampled === undefined ? [] : [[id, sampled] as const];
      }),
    ),
    rules: tally.holdsIn(),
  };
}

/** {@link sampleInSteps} at once. */
export function sampleVerdicts(...drawn: Parameters<typeof sampleInSteps>): Samples {
  return finish(sampleInSteps(...drawn));
}
