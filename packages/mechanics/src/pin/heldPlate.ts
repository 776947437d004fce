import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Greatest bending stress of a round plate whose edge is built in, under an even pressure, at its edge:
 * 0.75 p (r / t)^2. A piston's crown taken so is without its ribs and without the heat.
 * @param input.pressure [Pa], > 0
 * @param input.radius to the built-in edge [m], > 0
 * @param input.thickness [m], > 0
 * @returns stress [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: Timoshenko, Theory of Plates and Shells (from memory); Khurmi & Gupta's form t = sqrt(3 p D^2 / (16 sigma)).
 */
export function heldPlateStress(input: { pressure: number; radius: number; thickness: number }): number {
  const { pressure, radius, thickness } = input;
  requireAll(positive, { pressure, radius, thickness });
  return 0.75 * pressure * (radius / thickness) ** 2;
}

/**
 * Thickness at which the same plate has the stress that is allowed. See `heldPlateStress`.
 * @param input.stress allowed [Pa], > 0
 * @returns thickness [m]
 * @throws RangeError when a value is not above zero
 *
 * Source: as `heldPlateStress`.
 */
export function heldPlateThickness(input: { pressure: number; radius: number; stress: number }): number {
  const { pressure, radius, stress } = input;
  requireAll(positive, { pressure, radius, stress });
  return radius * Math.sqrt((0.75 * pressure) / stress);
}
