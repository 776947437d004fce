import { finite, requireAll } from "../check/requireAll.ts";
import { cornerDistance } from "../outline/cornerDistance.ts";
import { type RodNearest, sweepOutline } from "../outline/sweepOutline.ts";
import { type RodToCylinder, sideFaceDistance } from "./rodToCylinderObstacle.ts";

/**
 * Half the chord of the bore at the rod's outer side face, sqrt((B/2)^2 - z^2), z = |offset| + width/2.
 * @param geometry bore, rod width and plane offset [m]; add float to the offset for the worst case
 * @returns half chord [m]
 * @throws RangeError when the rod does not fit in the bore sideways
 *
 * Source: plane geometry.
 */
export function boreHalfChord(geometry: Pick<RodToCylinder, "bore" | "bigEndWidth" | "planeOffset">): number {
  const face = sideFaceDistance(geometry);
  return Math.sqrt((geometry.bore / 2) ** 2 - face * face);
}

/**
 * The chord form of the clearance, for hand work: measured across in the plane of the rod's side face
 * instead of square to the wall, so never smaller than the exact value while the rod is free, and larger
 * by up to bore / chord. A verdict needs rodToCylinderBottom.
 * @param geometry as for rodToCylinderBottom; a notch is left out
 * @returns chord clearance [m], crank angle and the rod's nearest point
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function chordClearance(geometry: RodToCylinder): RodNearest {
  const { crank, outline, cylinderAxisOffset: axis, cylinderBottomHeight: bottom } = geometry;
  requireAll(finite, { cylinderAxisOffset: axis, cylinderBottomHeight: bottom });
  const half = boreHalfChord(geometry);
  const obstacle = [1, -1].map(
    (side) => (x: number, y: number) => cornerDistance(half - side * (x - axis), bottom - y),
  );
  return sweepOutline({ crank, outline, obstacle, hollow: 0 });
}
