import { finite, requireAll } from "../check/requireAll.ts";
import { requireSliderCrank, type SliderCrank } from "./SliderCrank.ts";

/**
 * Angle of the connecting rod to the cylinder axis, from sin(phi) = (r sin(theta) - e) / l.
 * @param crank the mechanism
 * @param angle crank angle [rad], 0 with the throw along the cylinder, positive with rotation
 * @returns rod angle phi [rad]; positive while the crankpin lies on the +x side of the pin line
 * @throws RangeError when the mechanism cannot turn or the angle is not finite
 *
 * Source: plane geometry.
 */
export function rodAngle(crank: SliderCrank, angle: number): number {
  requireSliderCrank(crank);
  requireAll(finite, { angle });
  return Math.asin((crank.throwRadius * Math.sin(angle) - crank.pinLineOffset) / crank.rodLength);
}

/**
 * Largest angle the rod makes with the cylinder axis over a turn, asin((r + |e|) / l).
 * @param crank the mechanism
 * @returns largest magnitude of the rod angle [rad]
 * @throws RangeError when the mechanism cannot turn
 *
 * Source: plane geometry.
 */
export function largestRodAngle(crank: SliderCrank): number {
  requireSliderCrank(crank);
  return Math.asin((crank.throwRadius + Math.abs(crank.pinLineOffset)) / crank.rodLength);
}
