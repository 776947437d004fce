import { finite, positive, requireAll } from "../check/requireAll.ts";
import { bankTilts, inLeaningFrame } from "../kinematics/bankTilts.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import type { RodOutline } from "../outline/RodOutline.ts";
import { type DistanceToFixedObstacle, type RodNearest, sweepOutline } from "../outline/sweepOutline.ts";
import { roundObstacle } from "./rodToPoint.ts";

/** A camshaft in the block. */
export interface CamshaftInBlock {
  /** camshaft axis from the crank axis across the block [m], + towards the side the crankpin moves to after its top */
  readonly across: number;
  /** camshaft axis above the crank axis, along the middle plane of the block [m] */
  readonly height: number;
  /** angle between the banks [rad], 0 to pi; 0 for one row */
  readonly bankAngle: number;
  /** circle that the highest lobe sweeps, base circle radius plus lobe lift [m], > 0 */
  readonly lobeRadius: number;
}

/** A rod and a camshaft in the block. */
export interface RodToCamshaft extends CamshaftInBlock {
  readonly crank: SliderCrank;
  readonly outline: RodOutline;
}

/**
 * The camshaft for the sweep of a rod, one part for each bank that it is seen from.
 * @param camshaft its place and its circle
 * @param tilts lean of the banks whose frames it is wanted in [rad]: of every bank when left out
 * @returns signed distances in the frames of the cylinders
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function camshaftObstacle(
  { across, height, bankAngle, lobeRadius }: CamshaftInBlock,
  tilts: readonly number[] = bankTilts(bankAngle),
): readonly DistanceToFixedObstacle[] {
  requireAll(finite, { across, height });
  requireAll(positive, { lobeRadius });
  return tilts.flatMap((tilt) =>
    roundObstacle({ ...inLeaningFrame({ x: across, y: height }, tilt), radius: lobeRadius }),
  );
}

/**
 * Least clearance between the rods and the camshaft over a turn, the camshaft taken as the circle that its
 * highest lobe sweeps: on the safe side, as the lobe need not point at the rod when the rod passes. With two
 * banks the rods of both are swept.
 * @param geometry mechanism, outline, place of the camshaft and its circle
 * @returns clearance [m], negative by how far the outline cuts into the circle; crank angle and nearest point
 *   in the frame of the cylinder whose rod comes nearest
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function rodToCamshaft({ crank, outline, ...camshaft }: RodToCamshaft): RodNearest {
  return sweepOutline({ crank, outline, obstacle: camshaftObstacle(camshaft), hollow: 0 });
}
