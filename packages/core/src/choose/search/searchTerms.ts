import { aimNames } from "./Objective.ts";
import { readWeights } from "./readWeights.ts";
import type { SearchTerms } from "./SearchResult.ts";
import type { SearchSpace } from "./SearchSpace.ts";
import type { SearchOptions } from "./search.ts";
import type { Demand } from "./Tally.ts";

/** As many combinations as are kept at most. */
const MOST_BEST = 1000;
/** As many shards as a search may be cut into. */
export const MOST_SHARDS = 1_000_000;

/** @throws RangeError when it is no whole number in its range */
export function whole(what: string, value: number, least: number, most: number): number {
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  throw new RangeError(`${what} ${value}: expected a whole number from ${least} to ${most}`);
}

/** @throws RangeError when something else is asked for than there is: code without types may say anything */
function oneOf<T>(what: string, value: T, known: readonly T[]): T {
  if (known.includes(value)) return value;
  throw new RangeError(
    `${what} ${JSON.stringify(value)}: expected ${known.map((one) => JSON.stringify(one)).join(" or ")}`,
  );
}

/** What a search is asked for, with what is taken where nothing is said. @throws RangeError, DimensionError */
export function searchTerms(
  options: SearchOptions & { readonly set?: string | undefined },
  space: SearchSpace,
): SearchTerms {
  const { objective = "cost", best = 10, front = [], demand, inStock, countAll, stage, set } = options;
  return {
    weights: readWeights(objective),
    ...(space.currency === undefined ? {} : { currency: space.currency }),
    best: whole("best", best, 0, MOST_BEST),
    front: [...new Set(front)].map((aim) => oneOf("front", aim, aimNames)),
    demand: oneOf<Demand>("demand", demand ?? false, [false, true, "known"]),
    inStock: inStock === true,
    countAll: countAll === true,
    ...(stage === undefined ? {} : { stage }),
    ...(set === undefined ? {} : { set }),
  };
}
