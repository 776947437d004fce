import { finite, notNegative, requireAll } from "../check/requireAll.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import type { RodOutline } from "../outline/RodOutline.ts";
import {
  DISTANCE,
  STEEP_X,
  STEEP_Y,
  steepDistance,
  type WriteDistance,
  X,
  Y,
} from "../outline/SteepDistance.ts";
import { type DistanceToFixedObstacle, type RodNearest, sweepOutline } from "../outline/sweepOutline.ts";

/** A round obstacle in the plane that the rod swings in. */
export interface RoundObstacle {
  /** centre of the obstacle in the frame of the cylinder [m] */
  readonly x: number;
  readonly y: number;
  /** radius of the obstacle [m], 0 for a point */
  readonly radius: number;
}

/** A rod and a round obstacle in the plane it swings in. */
export interface RodToPoint extends RoundObstacle {
  readonly crank: SliderCrank;
  readonly outline: RodOutline;
}

/**
 * A round obstacle for the sweep of a rod.
 * @param obstacle centre and radius
 * @returns its one part, as a signed distance in the frame of the cylinder
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function roundObstacle({ x, y, radius }: RoundObstacle): readonly DistanceToFixedObstacle[] {
  requireAll(finite, { x, y });
  requireAll(notNegative, { radius });
  const write: WriteDistance = (n) => {
    const dx = n[X]! - x;
    const dy = n[Y]! - y;
    const way = Math.sqrt(dx * dx + dy * dy);
    n[DISTANCE] = way - radius;
    n[STEEP_X] = way === 0 ? 0 : dx / way;
    n[STEEP_Y] = way === 0 ? 0 : dy / way;
  };
  return [steepDistance(write, {})];
}

/**
 * Least clearance between the rod and a point or circle over a turn: an oil jet, or a camshaft taken as
 * the circle its highest lobe sweeps (radius = base circle + lobe lift), which is on the safe side.
 * Only obstacles whose extent along the crank meets the rod's width matter.
 * @param geometry mechanism, outline, centre and radius of the obstacle
 * @returns clearance [m], negative by how far the outline cuts into the circle; crank angle; nearest point.
 *   The obstacle must lie outside the rod at some crank angle: then one the rod runs over cuts its outline
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function rodToPoint({ crank, outline, ...round }: RodToPoint): RodNearest {
  return sweepOutline({ crank, outline, obstacle: roundObstacle(round), hollow: 0 });
}
