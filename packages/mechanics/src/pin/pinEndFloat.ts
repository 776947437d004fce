import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * End float of a floating pin between its retainers.
 * @param input.retainerSpan between the outer faces of the retainer grooves [m], > 0
 * @param input.retainerThickness of one retainer [m], >= 0
 * @param input.pinLength [m], > 0
 * @returns float [m], - when the pin does not go between the retainers
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function pinEndFloat(input: {
  retainerSpan: number;
  retainerThickness: number;
  pinLength: number;
}): number {
  const { retainerSpan, retainerThickness, pinLength } = input;
  requireAll(positive, { retainerSpan, pinLength });
  requireAll(notNegative, { retainerThickness });
  return retainerSpan - 2 * retainerThickness - pinLength;
}
