import { finite, positive, requireAll } from "../check/requireAll.ts";
import { bankTilts, seenFromLeaningFrame } from "../kinematics/bankTilts.ts";
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
  /** angle between the banks [rad], 0 to pi; 0 or left out for one row square to the rails */
  readonly bankAngle?: number | undefined;
}

/**
 * Least clearance between the rods and the oil pan rails over a turn. The metal is taken to fill
 * |x| >= railHalfWidth above the lower edge, so the wall of the crankcase counts with it. The rails lie square
 * to the middle plane of the block. With two banks the rods of both are swept, and the metal ends at the height
 * of the crank axis (or of the rail, if that is higher), as above it the block opens towards the banks.
 * @param geometry mechanism, outline, inner and lower edge of the rails
 * @returns clearance [m], negative when they overlap; crank angle and nearest point in the frame of the
 *   cylinder whose rod comes nearest
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function rodToRail(geometry: RodToRail): RodNearest {
  const { crank, outline, railHalfWidth, railHeight, bankAngle = 0 } = geometry;
  requireAll(positive, { railHalfWidth });
  requireAll(finite, { railHeight });
  const top = bankAngle === 0 ? Number.POSITIVE_INFINITY : Math.max(0, railHeight);
  const metal = (side: number) => (x: number, y: number) =>
    Math.max(cornerDistance(railHalfWidth - side * x, railHeight - y), y - top);
  const obstacle = bankTilts(bankAngle).flatMap((tilt) =>
    [1, -1].map((side) => seenFromLeaningFrame(metal(side), tilt)),
  );
  return sweepOutline({ crank, outline, obstacle });
}
