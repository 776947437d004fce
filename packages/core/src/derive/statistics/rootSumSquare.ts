import type { AtPoint, Tolerance } from "../searchBand.ts";

/** Why a root-sum-square band is not to be trusted. */
export const doubtWords = {
  turns: "it may turn round within the tolerances, as a least or greatest of several things does",
  bends: "it is far from a straight line over the tolerances",
} as const;
export type Doubt = keyof typeof doubtWords;

/** A root-sum-square band, SI. */
export interface RootSumSquare {
  readonly low: number;
  /** The value with every input at the middle of its tolerance. */
  readonly centre: number;
  readonly high: number;
  /** Share of each input in the sum of the squares, 0 to 1, largest first; only those that matter. */
  readonly spread: readonly { readonly path: string; readonly share: number }[];
  readonly doubts: readonly Doubt[];
}

/** Part of the half-width by which a quantity may stray from a straight line before its band is doubted. */
const STRAIGHT = 0.1;
/** The same for a quantity that may turn round: straight so far, it does not turn within these tolerances. */
const STRAIGHT_IF_GUARDED = 0.02;
/** Rounding by which a middle may differ from the nominal value and still be it, as part of the tolerance. */
const ROUNDING = 1e-9;

function middleOf({ low, nominal, high }: Tolerance): number {
  const middle = low + (high - low) / 2;
  return Math.abs(middle - nominal) <= ROUNDING * (high - low) ? nominal : middle;
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

/**
 * The root-sum-square band of a quantity: centre ± √Σ(½·(f(x_i at its high end) − f(x_i at its low end)))², all other
 * inputs at the middle of their tolerances. The differences run along the whole chain to the entered inputs, so that
 * an input which several parts of the chain share counts once, with its true sign.
 *
 * Assumes that the inputs lie in their tolerances independently of each other, symmetrically about the middle, and
 * that every tolerance is the same number of standard deviations; the band then is that number of standard deviations
 * of the quantity. Uneven tolerances (+0.1/−0) are taken as even ones about their middle, as is usual.
 *
 * Not to be trusted where the quantity is far from a straight line: then `doubts` says so. That is seen from the
 * middles of the single effects and from their sum, which for a straight line is the searched worst case at both ends.
 * The band never reaches beyond the worst case.
 * @param at the quantity [SI] over one number for each tolerance in order; any range, RangeError where it cannot be
 * @param worst the worst-case band, SI
 * @param guarded whether the quantity may have its extremes inside of the tolerances
 *
 * Source: law of propagation of uncertainty for independent inputs, JCGM 100:2008 (from memory).
 */
export function rootSumSquare(
  at: AtPoint,
  tolerances: readonly Tolerance[],
  worst: { readonly low: number; readonly high: number },
  guarded: boolean,
): RootSumSquare {
  const middles = tolerances.map(middleOf);
  const centre = at(middles);
  const effects = tolerances.map(({ path, low, high }, index) => {
    const [atLow, atHigh] = [at(middles.with(index, low)), at(middles.with(index, high))];
    return { path, slope: (atHigh - atLow) / 2, bend: (atHigh + atLow) / 2 - centre };
  });
  const squares = sum(effects.map(({ slope }) => slope ** 2));
  const half = Math.sqrt(squares);
  const straight = sum(effects.map(({ slope }) => Math.abs(slope)));
  const strays = Math.max(
    Math.hypot(...effects.map(({ bend }) => bend)) / half,
    ...[worst.high - centre, centre - worst.low].map((reach) => Math.abs(reach / straight - 1)),
  );
  const settled = worst.high === worst.low || strays <= (guarded ? STRAIGHT_IF_GUARDED : STRAIGHT);
  const within = (value: number) => Math.min(worst.high, Math.max(worst.low, value));
  return {
    low: within(centre - half),
    centre,
    high: within(centre + half),
    spread: effects
      .map(({ path, slope }) => ({ path, share: squares === 0 ? 0 : slope ** 2 / squares }))
      .filter(({ share }) => share > 0)
      .sort((a, b) => b.share - a.share || (a.path < b.path ? -1 : 1)),
    doubts: settled ? [] : guarded ? ["turns"] : ["bends"],
  };
}
