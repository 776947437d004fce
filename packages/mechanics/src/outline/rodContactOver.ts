import { nearestAtAngle } from "./nearestAtAngle.ts";
import { outlineCurves } from "./OutlineCurve.ts";
import type { BlockPoint } from "./rodFrame.ts";
import { type RodNearest, type RodSweep, requireSweep } from "./sweepOutline.ts";

/** Both ends of the shortest way between the rod and an obstacle. */
export interface RodContact extends RodNearest {
  /** the obstacle's end of the way, in the frame of the cylinder [m] */
  readonly metal: BlockPoint;
}

/** Step of the differences that give the direction to the metal [m]: far below any part, far above rounding. */
const STEP = 1e-7;

/**
 * Where the rod comes nearest to an obstacle at any one crank angle, checked once: for plots and pictures.
 * @param sweep the mechanism, the outline and the parts of the obstacle
 * @returns crank angle [rad] → the nearest approach. The metal's end lies along the steepest fall of the distance;
 *   where that is a distance in space, it is drawn in the plane of the rod's side face
 * @throws RangeError when the mechanism cannot turn, or outline or obstacle are empty
 *
 * Source: plane geometry.
 */
export function rodContactOver(sweep: RodSweep): (angle: number) => RodContact {
  requireSweep(sweep);
  const curves = outlineCurves(sweep.outline);
  return (angle) => {
    const nearest = nearestAtAngle(sweep, curves, angle);
    const { x, y } = nearest.point;
    const distance = (px: number, py: number) =>
      sweep.obstacle.reduce((least, part) => Math.min(least, part(px, py, angle)), Number.POSITIVE_INFINITY);
    const slopeX = distance(x + STEP, y) - distance(x - STEP, y);
    const slopeY = distance(x, y + STEP) - distance(x, y - STEP);
    const steepness = Math.hypot(slopeX, slopeY) || 1;
    const way = nearest.clearance / steepness;
    return { ...nearest, metal: { x: x - way * slopeX, y: y - way * slopeY } };
  };
}
