import { notNegative, requireAll } from "../check/requireAll.ts";
import { topDeadCentre } from "../kinematics/deadCentres.ts";
import { pistonAcceleration } from "../kinematics/pistonAcceleration.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";

/**
 * Pull of the reciprocating mass at the top dead centre of the gas exchange, where no gas holds the piston
 * down.
 * @param input.crank the mechanism
 * @param input.reciprocatingMass [kg], >= 0
 * @param input.angularSpeed crankshaft speed [rad/s], >= 0; the overspeed for strength
 * @returns force [N], + pulls on the rod
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals; plane geometry.
 */
export function inertiaForceAtTopDeadCentre(input: {
  crank: SliderCrank;
  reciprocatingMass: number;
  angularSpeed: number;
}): number {
  const { crank, angularSpeed } = input;
  requireAll(notNegative, { reciprocatingMass: input.reciprocatingMass, angularSpeed });
  return -input.reciprocatingMass * pistonAcceleration(crank, topDeadCentre(crank).angle, angularSpeed);
}
