import { finite, requireAll } from "../check/requireAll.ts";
import { requireSliderCrank, type SliderCrank } from "./SliderCrank.ts";

/**
 * Piston acceleration over the crank angle at constant crankshaft speed, checked once: for sweeps.
 * @param crank the mechanism
 * @param angularSpeed crankshaft speed [rad/s], constant
 * @returns crank angle [rad] → acceleration [m/s2], + away from the crank
 * @throws RangeError when the mechanism cannot turn or the speed is not finite
 *
 * Source: plane geometry.
 */
export function pistonAccelerationOver(crank: SliderCrank, angularSpeed: number): (angle: number) => number {
  requireSliderCrank(crank);
  requireAll(finite, { angularSpeed });
  const { throwRadius: r, rodLength: l, pinLineOffset: e } = crank;
  const square = angularSpeed ** 2;
  return (angle) => {
    const across = r * Math.sin(angle);
    const along = r * Math.cos(angle);
    const sine = (across - e) / l;
    const cosine = Math.sqrt(1 - sine * sine);
    return square * (-along + (across * sine) / cosine - (along * along) / (l * (cosine * cosine * cosine)));
  };
}

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
  requireAll(finite, { angle });
  return pistonAccelerationOver(crank, angularSpeed)(angle);
}
