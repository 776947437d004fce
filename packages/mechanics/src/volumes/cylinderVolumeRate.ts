import { pistonVelocity } from "../kinematics/pistonVelocity.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { boreArea } from "./boreArea.ts";

/**
 * Change of cylinder volume for each radian of crank angle, -A dy/dtheta.
 * @param input.crank the mechanism
 * @param input.bore finished bore [m], > 0
 * @param input.angle crank angle [rad]
 * @returns rate [m3/rad], + while the volume grows
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function cylinderVolumeRate(input: { crank: SliderCrank; bore: number; angle: number }): number {
  return -boreArea(input.bore) * pistonVelocity(input.crank, input.angle, 1);
}
