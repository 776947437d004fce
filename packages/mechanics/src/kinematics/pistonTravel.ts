import { topDeadCentre } from "./deadCentres.ts";
import { pinHeight } from "./pinHeight.ts";
import type { SliderCrank } from "./SliderCrank.ts";

/**
 * Distance the piston stands below its top dead centre.
 * @param crank the mechanism
 * @param angle crank angle [rad]
 * @returns travel s [m], from 0 to the stroke
 * @throws RangeError when the mechanism cannot turn or the angle is not finite
 *
 * Source: plane geometry.
 */
export function pistonTravel(crank: SliderCrank, angle: number): number {
  return topDeadCentre(crank).height - pinHeight(crank, angle);
}
