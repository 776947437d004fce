import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Bearing pressure on the projected area, F / (d L).
 * @param input.force load on the bearing [N], >= 0
 * @param input.diameter of pin or journal [m], > 0
 * @param input.length loaded length [m], > 0: the small end's width, or both bosses together
 * @returns pressure [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function bearingPressure(input: { force: number; diameter: number; length: number }): number {
  const { force, diameter, length } = input;
  requireAll(notNegative, { force });
  requireAll(positive, { diameter, length });
  return force / (diameter * length);
}
