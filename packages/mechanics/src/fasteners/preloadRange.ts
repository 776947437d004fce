import { notNegative, requireAll } from "../check/requireAll.ts";

/**
 * Least and greatest preload about a nominal one when the tightening method scatters by a factor
 * (greatest over least), symmetric about the mean.
 * @param input.preload nominal preload [N], >= 0
 * @param input.factor tightening factor, greatest over least [-], >= 1: about 1.1-1.2 by stretch, 1.4-1.6 by
 * torque wrench with tested friction (VDI 2230-1 table, from memory)
 * @returns least and greatest preload [N]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1 (tightening factor).
 */
export function preloadRange(input: { preload: number; factor: number }): {
  least: number;
  greatest: number;
} {
  const { preload, factor } = input;
  requireAll(notNegative, { preload });
  requireAll({ atLeast: 1 }, { factor });
  const least = (2 * preload) / (1 + factor);
  return { least, greatest: factor * least };
}
