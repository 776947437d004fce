import type { Steps } from "./Steps.ts";
import type { Tolerance } from "./searchBand.ts";

/** Inputs up to which a search in all directions is cheap and finds its way. */
export const FEW = 4;
/** Steps, as shares of each tolerance, from the first to where no more is gained. */
const FIRST_STEP = 0.25;
const LAST_STEP = 1e-5;
/** Shrinks slowly: halved steps end on a kink before its top is reached. */
const SHRINK = 0.7;

/** Directions tried at each step beside those along one input. */
const SLANTED = 24;

/** Directions slanted to all inputs, the same in every run. */
function slanting(count: number): () => readonly (readonly number[])[] {
  let state = 20_261_126;
  const next = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 31 - 1;
  };
  return () => Array.from({ length: SLANTED }, () => Array.from({ length: count }, next));
}

/**
 * Goes on from an extreme that was found on a grid to the extreme beside it, by steps that shrink until they are
 * too small to matter. A quantity with a kink (the greater of two things, a size without its sign) turns between the
 * points of any grid, and often only slanted steps lead on along it. Stops after each round of steps.
 * @param at the value, to be raised
 * @param start the point to begin from
 * @param tolerances ranges of the inputs, {@link FEW} at most
 * @returns the greatest value met
 *
 * Source: direct search with random directions, numerical practice.
 */
export function* refineExtreme(
  at: (point: readonly number[]) => number,
  start: readonly number[],
  tolerances: readonly Tolerance[],
): Steps<number> {
  const alone = tolerances.flatMap((_, i) =>
    [1, -1].map((sign) => tolerances.map((__, j) => (i === j ? sign : 0))),
  );
  const slanted = slanting(tolerances.length);
  let [point, best] = [start, at(start)];
  for (let step = FIRST_STEP; step >= LAST_STEP; ) {
    const from = point;
    for (const way of [...alone, ...slanted()]) {
      const next = tolerances.map(({ low, high }, i) =>
        Math.min(high, Math.max(low, from[i]! + way[i]! * step * (high - low))),
      );
      const value = at(next);
      if (value > best) [point, best] = [next, value];
    }
    if (point === from) step *= SHRINK;
    yield;
  }
  return best;
}
