import { notNegative, requireAll } from "../check/requireAll.ts";
import {
  DISTANCE,
  STEEP_X,
  STEEP_Y,
  steepDistance,
  writeDistance,
  writeFromLeaningFrame,
  X,
} from "../outline/SteepDistance.ts";
import { type RodNearest, type RodSweep, sweepOutline } from "../outline/sweepOutline.ts";
import { boreHollow, cylinderObstacle, type RodToCylinder } from "./rodToCylinderObstacle.ts";

/** A rod and the cylinder of the other bank that shares its crankpin. */
export interface RodToOppositeCylinder extends Omit<RodToCylinder, "notch"> {
  /** angle between the banks [rad], above 0 to pi */
  readonly bankAngle: number;
  /** distance along the crank between the axes of the two cylinders [m], >= 0 */
  readonly bankStagger: number;
}

/**
 * Parts of the cylinders of the other bank, on either side, as a rod sees them from its own cylinder: the metal around
 * their bottoms, as far as the middle plane of the block.
 * @param geometry as for {@link rodToOppositeCylinder}
 * @returns the parts, and how hollow they are
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function oppositeObstacle(
  geometry: Omit<RodToOppositeCylinder, "crank" | "outline">,
): Pick<RodSweep, "obstacle"> & { readonly hollow: (within: number) => number } {
  const { bankAngle, bankStagger, planeOffset } = geometry;
  requireAll({ above: 0, atMost: Math.PI }, { bankAngle });
  requireAll(notNegative, { bankStagger });
  const farther = { ...geometry, planeOffset: bankStagger + Math.abs(planeOffset) };
  const parts = cylinderObstacle(farther);
  // Seen from either bank, the other one leans by the whole bank angle, and the middle plane by half of it.
  const obstacle = [1, -1].flatMap((side) => {
    const beyondMiddle = writeFromLeaningFrame(
      (n) => {
        n[DISTANCE] = -side * n[X]!;
        n[STEEP_X] = -side;
        n[STEEP_Y] = 0;
      },
      (side * bankAngle) / -2,
    );
    return parts.map((part) => {
      const seen = writeFromLeaningFrame(writeDistance(part), -side * bankAngle);
      return steepDistance((n) => {
        beyondMiddle(n);
        const distance = n[DISTANCE]!;
        const steepX = n[STEEP_X]!;
        const steepY = n[STEEP_Y]!;
        seen(n);
        if (n[DISTANCE]! >= distance) return;
        n[DISTANCE] = distance;
        n[STEEP_X] = steepX;
        n[STEEP_Y] = steepY;
      }, {});
    });
  });
  return { obstacle, hollow: boreHollow(farther) };
}

/**
 * Least clearance between the rods of one bank and the bottoms of the cylinders of the other, over a turn, for
 * the two cylinders of one crankpin. The metal of each bank is taken to end at the middle plane of the block;
 * near that plane the value is the smaller of two ways out, so on the safe side.
 * @param geometry as for rodToCylinderBottom, planeOffset counted so that it brings the rod nearer to the wall
 *   of the other cylinder; notches are left out
 * @returns clearance [m], negative when they overlap; crank angle and nearest point in the frame of the rod's
 *   own cylinder
 * @throws RangeError naming the dimension that is out of range: the rod must pass within the other bore
 *
 * Source: plane geometry.
 */
export function rodToOppositeCylinder(geometry: RodToOppositeCylinder): RodNearest {
  const { crank, outline } = geometry;
  return sweepOutline({ crank, outline, ...oppositeObstacle(geometry) });
}
