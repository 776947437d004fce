import { notNegative, requireAll } from "../check/requireAll.ts";
import { seenFromLeaningFrame } from "../kinematics/bankTilts.ts";
import { type RodNearest, sweepOutline } from "../outline/sweepOutline.ts";
import { boreHollow, cylinderObstacle, type RodToCylinder } from "./rodToCylinderObstacle.ts";

/** A rod and the cylinder of the other bank that shares its crankpin. */
export interface RodToOppositeCylinder extends Omit<RodToCylinder, "notch"> {
  /** angle between the banks [rad], above 0 to pi */
  readonly bankAngle: number;
  /** distance along the crank between the axes of the two cylinders [m], >= 0 */
  readonly bankStagger: number;
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
  const { crank, outline, bankAngle, bankStagger, planeOffset } = geometry;
  requireAll({ above: 0, atMost: Math.PI }, { bankAngle });
  requireAll(notNegative, { bankStagger });
  const farther = { ...geometry, planeOffset: bankStagger + Math.abs(planeOffset) };
  const parts = cylinderObstacle(farther);
  // Seen from either bank, the other one leans by the whole bank angle, and the middle plane by half of it.
  const obstacle = [1, -1].flatMap((side) => {
    const beyondMiddle = seenFromLeaningFrame((x) => -side * x, (side * bankAngle) / -2);
    return parts.map((part) => {
      const seen = seenFromLeaningFrame(part, -side * bankAngle);
      return (x: number, y: number): number => Math.max(seen(x, y), beyondMiddle(x, y));
    });
  });
  return sweepOutline({ crank, outline, obstacle, hollow: boreHollow(farther) });
}
