import { finite, requireAll } from "../check/requireAll.ts";
import { requireSliderCrank, type SliderCrank } from "./SliderCrank.ts";

/**
 * Piston velocity over the crank angle at constant crankshaft speed, checked once: for sweeps.
 * @param crank the mechanism
 * @param angularSpeed crankshaft speed [rad/s], constant, positive with rotation
 * @returns crank angle [rad] → velocity [m/s], + away from the crank
 * @throws RangeError when the mechanism cannot turn or the speed is not finite
 *
 * Source: plane geometry.
 */
export function pistonVelocityOver(crank: SliderCrank, angularSpeed: number): (angle: number) => number {
  requireSliderCrank(crank);
  requireAll(finite, { angularSpeed });
  const { throwRadius: r, rodLength: l, pinLineOffset: e } = crank;
  return (angle) => {
    const across = r * Math.sin(angle);
    const sine = (across - e) / l;
    return angularSpeed * (-across - (r * Math.cos(angle) * sine) / Math.sqrt(1 - sine * sine));
  };
}

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
  requireAll(finite, { angle });
  return pistonVelocityOver(crank, angularSpeed)(angle);
}
