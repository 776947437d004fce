/** What many drawn engines say of one quantity, SI. */
export interface Sampled {
  /** Engines in which it could be computed. */
  readonly engines: number;
  readonly mean: number;
  /** Standard deviation; 0 for a single engine. */
  readonly deviation: number;
  /** Value below which 2.5 of 100 engines lie. */
  readonly low: number;
  readonly median: number;
  /** Value above which 2.5 of 100 engines lie. */
  readonly high: number;
  readonly least: number;
  readonly greatest: number;
}

/**
 * The value below which a share of sorted numbers lies; between two of them by a straight line.
 * @param share 0 to 1
 *
 * Source: definition 7 of R. J. Hyndman, Y. Fan, “Sample Quantiles in Statistical Packages”, 1996 (from memory).
 */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below]!;
  return low + (place - below) * ((sorted[below + 1] ?? low) - low);
}

/**
 * Mean, standard deviation, quantiles and ends of drawn values, in any order.
 * @returns undefined where there is none
 */
export function summarise(values: readonly number[]): Sampled | undefined {
  const sorted = Float64Array.from(values).sort();
  const engines = sorted.length;
  if (engines === 0) return undefined;
  const [least, greatest] = [sorted[0]!, sorted[engines - 1]!];
  // From the least value on, so that a small scatter of a large value is not lost in rounding.
  const mean = least + sorted.reduce((sum, value) => sum + (value - least), 0) / engines;
  const squares = sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return {
    engines,
    mean: Math.min(greatest, mean),
    deviation: engines === 1 ? 0 : Math.sqrt(squares / (engines - 1)),
    low: quantile(sorted, 0.025),
    median: quantile(sorted, 0.5),
    high: quantile(sorted, 0.975),
    least,
    greatest,
  };
}
