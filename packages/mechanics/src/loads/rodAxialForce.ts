import { finite, notNegative, requireAll } from "../check/requireAll.ts";
import { pistonAcceleration } from "../kinematics/pistonAcceleration.ts";
import { rodAngle } from "../kinematics/rodAngle.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";

/**
 * Axial force in the rod, N = (m_rec a + F_g) / cos(phi), the rod replaced by two masses at its ends.
 * @param input.crank the mechanism
 * @param input.angle crank angle [rad]
 * @param input.angularSpeed crankshaft speed [rad/s], constant
 * @param input.reciprocatingMass [kg], >= 0
 * @param input.gasForce on the piston [N], + towards the crank
 * @returns force [N], + compression
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function rodAxialForce(input: {
  crank: SliderCrank;
  angle: number;
  angularSpeed: number;
  reciprocatingMass: number;
  gasForce: number;
}): number {
  const { crank, angle, angularSpeed, gasForce } = input;
  requireAll(notNegative, { reciprocatingMass: input.reciprocatingMass });
  requireAll(finite, { gasForce });
  const inertia = input.reciprocatingMass * pistonAcceleration(crank, angle, angularSpeed);
  return (inertia + gasForce) / Math.cos(rodAngle(crank, angle));
}
