import { finite, positive, requireAll } from "../check/requireAll.ts";
import { bankTilts, inLeaningFrame } from "../kinematics/bankTilts.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import type { RodOutline } from "../outline/RodOutline.ts";
import { type RodNearest, sweepOutline } from "../outline/sweepOutline.ts";

/** A rod and a camshaft in the block. */
export interface RodToCamshaft {
  readonly crank: SliderCrank;
  readonly outline: RodOutline;
  /** camshaft axis from the crank axis across the block [m], + towards the side the crankpin moves to after its top */
  readonly across: number;
  /** camshaft axis above the crank axis, along the middle plane of the block [m] */
  readonly height: number;
  /** angle between the banks [rad], 0 to pi; 0 for one row */
  readonly bankAngle: number;
  /** circle that the highest lobe sweeps, base circle radius plus lobe lift [m], > 0 */
  readonly lobeRadius: number;
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
export function rodToCamshaft(geometry: RodToCamshaft): RodNearest {
  const { crank, outline, across, height, bankAngle, lobeRadius } = geometry;
  requireAll(finite, { across, height });
  requireAll(positive, { lobeRadius });
  const obstacle = bankTilts(bankAngle).map((tilt) => {
    const axis = inLeaningFrame({ x: across, y: height }, tilt);
    return (x: number, y: number): number =>
      Math.sqrt((x - axis.x) * (x - axis.x) + (y - axis.y) * (y - axis.y)) - lobeRadius;
  });
  return sweepOutline({ crank, outline, obstacle });
}
