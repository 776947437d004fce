/** The numbers a parameter may take. Every interval also asks for a finite number. */
export interface Interval {
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly atMost?: number;
}

/** Any finite number. */
export const finite: Interval = {};
/** Lengths, masses, moduli and speeds that cannot be zero. */
export const positive: Interval = { above: 0 };
/** Magnitudes that may be zero. */
export const notNegative: Interval = { atLeast: 0 };
/** A share from nothing to the whole. */
export const share: Interval = { atLeast: 0, atMost: 1 };

function isWithin(value: number, interval: Interval): boolean {
  if (!Number.isFinite(value)) return false;
  if (interval === finite) return true;
  if (interval === positive) return value > 0;
  const { above, atLeast, below, atMost } = interval;
  return (
    (above === undefined || value > above) &&
    (atLeast === undefined || value >= atLeast) &&
    (below === undefined || value < below) &&
    (atMost === undefined || value <= atMost)
  );
}

function describe({ above, atLeast, below, atMost }: Interval): string {
  const limits = [
    above === undefined ? "" : `above ${above}`,
    atLeast === undefined ? "" : `at least ${atLeast}`,
    below === undefined ? "" : `below ${below}`,
    atMost === undefined ? "" : `at most ${atMost}`,
  ].filter((limit) => limit !== "");
  return limits.length === 0 ? "a finite number" : `a finite number ${limits.join(" and ")}`;
}

/**
 * Checks named numbers against one interval. The names are the names of the parameters, so the
 * message leads the caller to the argument that is wrong.
 * @param interval the numbers allowed
 * @param values the numbers by parameter name
 * @throws RangeError naming the first parameter outside the interval, the value found and what was expected
 *
 * Source: definition of an interval.
 */
export function requireAll(interval: Interval, values: Readonly<Record<string, number>>): void {
  // Sweeps call this millions of times: listing the entries would allocate on each call.
  for (const name in values) {
    const value = values[name]!;
    if (!isWithin(value, interval)) {
      throw new RangeError(`${name}: found ${value}, expected ${describe(interval)}`);
    }
  }
}

/**
 * Throws the package's range error for a condition between several numbers.
 * @param holds the condition that must be true
 * @param name the parameter (or parameters) the condition is about
 * @param found the value found
 * @param expected what was expected, in words
 * @throws RangeError when the condition does not hold
 *
 * Source: definition.
 */
export function requireThat(holds: boolean, name: string, found: number, expected: string): void {
  if (!holds) throw new RangeError(`${name}: found ${found}, expected ${expected}`);
}

/**
 * Checks a number of pieces: bolts, rods, cylinders.
 * @param values the counts by parameter name
 * @throws RangeError naming the first parameter that is not a whole number from 1
 *
 * Source: definition.
 */
export function requireCounts(values: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(values)) {
    requireThat(Number.isInteger(value) && value >= 1, name, value, "a whole number from 1");
  }
}
