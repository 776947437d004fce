import { notNegative, positive, requireAll } from "../check/requireAll.ts";
import { leastOnInterval } from "../outline/leastOnInterval.ts";
import { cycleSteps, fourStrokeCycle } from "../valves/fourStrokeCycle.ts";
import type { LiftCurve } from "../valves/LiftCurve.ts";

/**
 * How far the line of contact runs out from the middle of a flat follower: the greatest follower speed per
 * camshaft angle, e = max |dL_f / dtheta_cam| = 2 max |dL_f / dtheta_crank|. Exact for a flat face.
 * @param input.curve lift of the valve
 * @param input.rockerRatio valve lift over follower lift [-], > 0; 1 for direct action
 * @returns distance [m] and the crank angle [rad] from overlap top dead centre where it is reached
 * @throws RangeError when the ratio is out of range
 *
 * Source: plane geometry.
 */
export function flatFollowerContactTravel(input: { curve: LiftCurve; rockerRatio: number }): {
  travel: number;
  angle: number;
} {
  const { curve, rockerRatio } = input;
  requireAll(positive, { rockerRatio });
  const half = fourStrokeCycle / 2;
  const least = leastOnInterval((angle) => -Math.abs(curve.at(angle).slope), -half, half, cycleSteps);
  return { travel: (-2 * least.value) / rockerRatio, angle: least.at };
}

/**
 * Face left between the line of contact and the edge of a flat follower centred under its cam: D / 2 - e.
 * Half to one millimetre must stay for the chamfer and the offset (common practice).
 * @param input.followerDiameter D [m], > 0
 * @param input.contactTravel e [m], >= 0
 * @returns room [m], - when the cam runs over the edge
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function flatFollowerEdgeRoom(input: { followerDiameter: number; contactTravel: number }): number {
  const { followerDiameter, contactTravel } = input;
  requireAll(positive, { followerDiameter });
  requireAll(notNegative, { contactTravel });
  return followerDiameter / 2 - contactTravel;
}
