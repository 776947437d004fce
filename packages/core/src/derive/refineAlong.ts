/** Steps along one input, as shares of its tolerance, from where the candidates stop to where no more is gained. */
const FIRST_STEP = 0.125;
const LAST_STEP = 1e-4;

/** Least and greatest value of one input. */
export type Ends = readonly [low: number, high: number];

/**
 * Goes on along one input from a candidate inside of its tolerance: there the value turns round, and on a kink (a size
 * without its sign) its extreme lies between the candidates.
 * @param valueAt the value, to be raised, with this input moved
 * @param start where the input stands
 * @param best the value there
 * @param ends of its tolerance
 * @returns where the greatest value was met
 *
 * Source: direct search with halved steps, numerical practice.
 */
export function refineAlong(
  valueAt: (value: number) => number,
  start: number,
  best: number,
  ends: Ends,
): number {
  const [low, high] = ends;
  let [choice, reached] = [start, best];
  for (let step = FIRST_STEP; step >= LAST_STEP; step /= 2) {
    const from = choice;
    for (const sign of [-1, 1]) {
      const value = Math.min(high, Math.max(low, from + sign * step * (high - low)));
      const result = valueAt(value);
      if (result > reached) [choice, reached] = [value, result];
    }
  }
  return choice;
}
