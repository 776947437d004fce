import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Valve lift over valve diameter L / D. The curtain area is as large as the port of that diameter at 0.25,
 * the stem ignored; more lift opens little more flow area.
 * @param input.lift [m], >= 0
 * @param input.valveDiameter [m], > 0
 * @returns ratio [-]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals.
 */
export function curtainRatio(input: { lift: number; valveDiameter: number }): number {
  requireAll(notNegative, { lift: input.lift });
  requireAll(positive, { valveDiameter: input.valveDiameter });
  return input.lift / input.valveDiameter;
}

/**
 * Area between the edge of the valve and its seat: the cylinder pi D L.
 * @param input.lift [m], >= 0
 * @param input.valveDiameter [m], > 0
 * @returns area [m2]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals.
 */
export function curtainArea(input: { lift: number; valveDiameter: number }): number {
  return Math.PI * curtainRatio(input) * input.valveDiameter ** 2;
}
