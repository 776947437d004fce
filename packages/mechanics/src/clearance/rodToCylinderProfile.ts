import { requireThat } from "../check/requireAll.ts";
import { nearestAtAngle } from "../outline/nearestAtAngle.ts";
import { outlineCurves } from "../outline/OutlineCurve.ts";
import { type RodNearest, requireSweep } from "../outline/sweepOutline.ts";
import { cylinderObstacle, type RodToCylinder } from "./rodToCylinderObstacle.ts";

/**
 * Clearance between rod and bottom of the cylinder at evenly spaced crank angles, for plots.
 * @param geometry as for rodToCylinderBottom
 * @param count number of crank angles: 0, 2 pi / count, and so on
 * @returns the nearest approach at each of them
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function rodToCylinderProfile(geometry: RodToCylinder, count: number): readonly RodNearest[] {
  requireThat(Number.isInteger(count) && count >= 1, "count", count, "a whole number of at least 1");
  const { crank, outline } = geometry;
  const sweep = { crank, outline, obstacle: cylinderObstacle(geometry) };
  requireSweep(sweep);
  const curves = outlineCurves(outline);
  return Array.from({ length: count }, (_, i) => nearestAtAngle(sweep, curves, (2 * Math.PI * i) / count));
}
