import { finite, requireAll } from "../check/requireAll.ts";
import { rodAngle } from "./rodAngle.ts";
import type { SliderCrank } from "./SliderCrank.ts";

/**
 * Piston velocity, v = omega (-r sin(theta) - r cos(theta) tan(phi)): the exact mechanism, no series.
 * @param crank the mechanism
 * @param angle crank angle [rad]
 * @param angularSpeed crankshaft speed [rad/s], constant, positive with rotation
 * @returns velocity [m/s], + away from the crank
 * @throws RangeError when the mechanism cannot turn or a value is not finite
 *
 * Source: plane geometry.
 */
export function pistonVelocity(crank: SliderCrank, angle: number, angularSpeed: number): number {
  requireAll(finite, { angularSpeed });
  const r = crank.throwRadius;
  return angularSpeed * (-r * Math.sin(angle) - r * Math.cos(angle) * Math.tan(rodAngle(crank, angle)));
}
