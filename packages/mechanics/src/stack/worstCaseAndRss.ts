import { notNegative, requireAll } from "../check/requireAll.ts";

/**
 * Spread of a chain of dimensions: the sum of the tolerances (no stack can be worse) and their root sum of
 * squares (the probable spread of independent parts).
 * @param tolerances plus-or-minus tolerance of each link [m], >= 0, already multiplied by how far the link
 * moves the result (half a stroke tolerance for the throw)
 * @returns worst case and root sum of squares [m], both as plus-or-minus
 * @throws RangeError when a tolerance is negative or not finite
 *
 * Source: definition.
 */
export function worstCaseAndRss(tolerances: readonly number[]): { worstCase: number; rss: number } {
  tolerances.forEach((tolerance, i) => {
    requireAll(notNegative, { [`tolerances[${i}]`]: tolerance });
  });
  return { worstCase: tolerances.reduce((sum, t) => sum + t, 0), rss: Math.hypot(...tolerances) };
}
