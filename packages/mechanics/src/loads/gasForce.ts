import { notNegative, requireAll } from "../check/requireAll.ts";
import { boreArea } from "../volumes/boreArea.ts";

/**
 * Force of the gas on the piston.
 * @param input.cylinderPressure absolute pressure above the piston [Pa], >= 0
 * @param input.casePressure absolute pressure in the crankcase [Pa], >= 0; 0 when the cylinder pressure is
 * gauge
 * @param input.bore finished bore [m], > 0
 * @returns force [N], + towards the crank
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals.
 */
export function gasForce(input: { cylinderPressure: number; casePressure: number; bore: number }): number {
  const { cylinderPressure, casePressure, bore } = input;
  requireAll(notNegative, { cylinderPressure, casePressure });
  return (cylinderPressure - casePressure) * boreArea(bore);
}
