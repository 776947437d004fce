import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import { findNearest, peakBetween } from "./findNearest.ts";
import type { Standing } from "./Standing.ts";

/** A ladder, by the build on each of its rungs. */
export interface Rising {
  readonly count: number;
  readonly at: (rung: number) => Standing;
  readonly rule: CompiledRule;
  /** A rung that came near to holding over the whole band. */
  readonly best: number;
}

/**
 * The rung at which a rule holds at the nominal values with the most room for tolerances; 0 where that is the size as it
 * is.
 * @returns undefined where it was found to hold at none
 */
export function* nominalRung({ count, at, rule, best }: Rising): Steps<number | undefined> {
  const does = (rung: number) => at(rung).nominalWord(rule) === "holds";
  const { rung: nearest } = yield* findNearest({
    count,
    lean: (rung) => at(rung).nominalLean(rule),
    *closely(rung) {
      yield;
      return at(rung).nominalLean(rule);
    },
    *holds(rung) {
      yield;
      return rung > 0 && does(rung);
    },
  });
  const asItIs = does(0);
  if (nearest === undefined) return asItIs ? 0 : does(best) ? best : undefined;
  let outer = nearest;
  for (let step = 1; outer < count && does(outer); step *= 2) outer = Math.min(count, nearest + step);
  const lean = function* (rung: number): Steps<number> {
    yield;
    return at(rung).lean(rule);
  };
  const peak = yield* peakBetween(nearest, outer, lean);
  const roomiest = does(peak) ? peak : nearest;
  return asItIs && at(0).lean(rule) >= at(roomiest).lean(rule) ? 0 : roomiest;
}
