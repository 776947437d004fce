import { finite, positive, requireAll } from "../check/requireAll.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { cornerDistance } from "../outline/cornerDistance.ts";
import type { RodOutline } from "../outline/RodOutline.ts";
import { type RodNearest, sweepOutline } from "../outline/sweepOutline.ts";

/** A rod and the oil pan rails on both sides of it. */
export interface RodToRail {
  readonly crank: SliderCrank;
  readonly outline: RodOutline;
  /** distance of the inner edge of the rails from the crank axis, across [m] */
  readonly railHalfWidth: number;
  /** height of the lower edge of the rails above the crank axis [m], negative below it */
  readonly railHeight: number;
}

/**
 * Least clearance between the rod and the oil pan rails over a turn. The metal is taken to fill
 * |x| >= railHalfWidth above the lower edge, so the wall of the crankcase counts with it.
 * @param geometry mechanism, outline, inner and lower edge of the rails
 * @returns clearance [m], negative when they overlap; crank angle; nearest point
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function rodToRail({ crank, outline, railHalfWidth, railHeight }: RodToRail): RodNearest {
  requireAll(positive, { railHalfWidth });
  requireAll(finite, { railHeight });
  const obstacle = [1, -1].map(
    (side) => (x: number, y: number) => cornerDistance(railHalfWidth - side * x, railHeight - y),
  );
  return sweepOutline({ crank, outline, obstacle });
}
