import { rodAngle } from "./rodAngle.ts";
import type { SliderCrank } from "./SliderCrank.ts";

/**
 * Height of the piston pin above the crank axis, y = r cos(theta) + l cos(phi).
 * @param crank the mechanism
 * @param angle crank angle [rad]
 * @returns pin height [m]
 * @throws RangeError when the mechanism cannot turn or the angle is not finite
 *
 * Source: plane geometry.
 */
export function pinHeight(crank: SliderCrank, angle: number): number {
  return crank.throwRadius * Math.cos(angle) + crank.rodLength * Math.cos(rodAngle(crank, angle));
}
