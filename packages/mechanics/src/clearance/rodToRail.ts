import { finite, positive, requireAll } from "../check/requireAll.ts";
import { bankTilts } from "../kinematics/bankTilts.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import type { RodOutline } from "../outline/RodOutline.ts";
import {
  steepDistance,
  type WriteDistance,
  writeCorner,
  writeFromLeaningFrame,
  X,
  Y,
} from "../outline/SteepDistance.ts";
import { type DistanceToFixedObstacle, type RodNearest, sweepOutline } from "../outline/sweepOutline.ts";

/** The oil pan rails on both sides of the crankshaft. */
export interface PanRails {
  /** distance of the inner edge of the rails from the crank axis, across [m] */
  readonly railHalfWidth: number;
  /** height of the lower edge of the rails above the crank axis [m], negative below it */
  readonly railHeight: number;
  /** angle between the banks [rad], 0 to pi; 0 or left out for one row square to the rails */
  readonly bankAngle?: number | undefined;
}

/** A rod and the oil pan rails on both sides of it. */
export interface RodToRail extends PanRails {
  readonly crank: SliderCrank;
  readonly outline: RodOutline;
}

/**
 * The oil pan rails for the sweep of a rod, one part for each side and each bank that they are seen from.
 * @param rails inner and lower edge of the rails
 * @param tilts lean of the banks whose frames the rails are wanted in [rad]: of every bank when left out
 * @returns signed distances in the frames of the cylinders
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function railObstacle(
  { railHalfWidth, railHeight, bankAngle = 0 }: PanRails,
  tilts: readonly number[] = bankTilts(bankAngle),
): readonly DistanceToFixedObstacle[] {
  requireAll(positive, { railHalfWidth });
  requireAll(finite, { railHeight });
  const top = bankAngle === 0 ? Number.POSITIVE_INFINITY : Math.max(0, railHeight);
  const metal =
    (side: number): WriteDistance =>
    (n) => {
      const toEdge = railHalfWidth - side * n[X]!;
      const toFace = railHeight - n[Y]!;
      const toTop = n[Y]! - top;
      writeCorner(n, toEdge, -side, Math.max(toFace, toTop), toFace >= toTop ? -1 : 1);
    };
  return tilts.flatMap((tilt) =>
    [1, -1].map((side) => steepDistance(writeFromLeaningFrame(metal(side), tilt), {})),
  );
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
export function rodToRail({ crank, outline, ...rails }: RodToRail): RodNearest {
  return sweepOutline({ crank, outline, obstacle: railObstacle(rails), hollow: 0 });
}
