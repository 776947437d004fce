import { positive, requireAll } from "../check/requireAll.ts";
import type { SliderCrank } from "./SliderCrank.ts";

/**
 * Rod ratio as builders quote it: rod length over nominal stroke, l / (2 r). Textbooks use r / l instead.
 * @param crank rodLength [m] and throwRadius [m], both > 0
 * @returns rod ratio [-]
 * @throws RangeError when a length is not above zero
 *
 * Source: definition; common practice divides by the stroke.
 */
export function rodRatio(crank: Pick<SliderCrank, "rodLength" | "throwRadius">): number {
  const { rodLength, throwRadius } = crank;
  requireAll(positive, { rodLength, throwRadius });
  return rodLength / (2 * throwRadius);
}
