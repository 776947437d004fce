import { finite, notNegative, requireAll } from "../check/requireAll.ts";
import { rodAngle } from "../kinematics/rodAngle.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";

/**
 * Force of the big-end bearing on the crankpin, in the cylinder's frame.
 * @param input.crank the mechanism
 * @param input.angle crank angle [rad]
 * @param input.angularSpeed crankshaft speed [rad/s], constant
 * @param input.rodForce axial force in the rod [N], + compression
 * @param input.rotatingRodMass rotating share of the rod [kg], >= 0
 * @returns x and y components [N], y + away from the crank, and magnitude [N]
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function crankpinLoad(input: {
  crank: SliderCrank;
  angle: number;
  angularSpeed: number;
  rodForce: number;
  rotatingRodMass: number;
}): { x: number; y: number; magnitude: number } {
  const { crank, angle, angularSpeed, rodForce, rotatingRodMass } = input;
  requireAll(finite, { angularSpeed, rodForce });
  requireAll(notNegative, { rotatingRodMass });
  const phi = rodAngle(crank, angle);
  const centrifugal = rotatingRodMass * crank.throwRadius * angularSpeed ** 2;
  const x = rodForce * Math.sin(phi) + centrifugal * Math.sin(angle);
  const y = -rodForce * Math.cos(phi) + centrifugal * Math.cos(angle);
  return { x, y, magnitude: Math.hypot(x, y) };
}

/**
 * Torque of one cylinder on the crankshaft, N r sin(theta + phi): the rod force times the distance of the
 * rod's line from the crank axis, exact with any offset.
 * @param input.crank the mechanism
 * @param input.angle crank angle [rad]
 * @param input.rodForce axial force in the rod [N], + compression
 * @returns torque [N m], + drives the crankshaft
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice; plane geometry.
 */
export function crankTorque(input: { crank: SliderCrank; angle: number; rodForce: number }): number {
  const { crank, angle, rodForce } = input;
  requireAll(finite, { rodForce });
  return rodForce * crank.throwRadius * Math.sin(angle + rodAngle(crank, angle));
}
