import { finite, requireAll } from "../check/requireAll.ts";
import { rodAngle } from "./rodAngle.ts";
import type { SliderCrank } from "./SliderCrank.ts";

/**
 * Piston acceleration at constant crankshaft speed,
 * a = omega^2 (-r cos(theta) + r sin(theta) tan(phi) - (r cos(theta))^2 / (l cos(phi)^3)).
 * @param crank the mechanism
 * @param angle crank angle [rad]
 * @param angularSpeed crankshaft speed [rad/s], constant
 * @returns acceleration [m/s2], + away from the crank, hence negative at top dead centre
 * @throws RangeError when the mechanism cannot turn or a value is not finite
 *
 * Source: plane geometry.
 */
export function pistonAcceleration(crank: SliderCrank, angle: number, angularSpeed: number): number {
  requireAll(finite, { angularSpeed });
  const phi = rodAngle(crank, angle);
  const across = crank.throwRadius * Math.sin(angle);
  const along = crank.throwRadius * Math.cos(angle);
  return (
    angularSpeed ** 2 *
    (-along + across * Math.tan(phi) - along ** 2 / (crank.rodLength * Math.cos(phi) ** 3))
  );
}
