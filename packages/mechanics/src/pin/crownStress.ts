import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Bending stress of a piston's crown, taken as a flat plate held at the first support, p (r_i / t)^2. It
 * overstates a crown with ribs: for comparing crowns of one kind.
 * @param input.pressure peak gas pressure [Pa], > 0
 * @param input.innerRadius from the cylinder axis to where the crown is first held [m], > 0
 * @param input.thickness of the crown [m], > 0
 * @returns stress [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: Kolchin & Demidov, Design of Automotive Engines (from memory).
 */
export function crownStress(input: { pressure: number; innerRadius: number; thickness: number }): number {
  const { pressure, innerRadius, thickness } = input;
  requireAll(positive, { pressure, innerRadius, thickness });
  return pressure * (innerRadius / thickness) ** 2;
}
