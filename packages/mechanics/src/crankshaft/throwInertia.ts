import { finite, notNegative, positive, requireAll, requireCounts } from "../check/requireAll.ts";

/**
 * Moment of inertia of one throw with its rods and pistons, for a torsional model: rotating mass counts
 * whole, reciprocating mass half, its mean over a turn.
 * @param input.crankInertia share of the crankshaft itself [kg m2], >= 0
 * @param input.rods rods on the crankpin, a whole number from 1
 * @param input.rotatingRodMass rotating share of one rod with its shells [kg], >= 0
 * @param input.reciprocatingMass of one cylinder [kg], >= 0
 * @param input.throwRadius [m], > 0
 * @returns moment of inertia about the crank axis [kg m2]
 * @throws RangeError when a value is out of range
 *
 * Source: Den Hartog, Mechanical Vibrations.
 */
export function throwInertia(input: {
  crankInertia: number;
  rods: number;
  rotatingRodMass: number;
  reciprocatingMass: number;
  throwRadius: number;
}): number {
  const { crankInertia, rods, rotatingRodMass, reciprocatingMass, throwRadius } = input;
  requireAll(notNegative, { crankInertia, rotatingRodMass, reciprocatingMass });
  requireAll(positive, { throwRadius });
  requireCounts({ rods });
  const massChange = rods * (rotatingRodMass + reciprocatingMass / 2);
  return crankInertia + inertiaChange({ massChange, radius: throwRadius });
}

/**
 * Change of inertia when mass is put on or taken off at a radius.
 * @param input.massChange [kg], + added, - removed
 * @param input.radius of its centre from the axis [m], >= 0
 * @returns change [kg m2]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function inertiaChange(input: { massChange: number; radius: number }): number {
  const { massChange, radius } = input;
  requireAll(finite, { massChange });
  requireAll(notNegative, { radius });
  return massChange * radius ** 2;
}
