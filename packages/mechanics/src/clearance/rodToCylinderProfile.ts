import { requireThat } from "../check/requireAll.ts";
import { rodContactOver } from "../outline/rodContactOver.ts";
import type { RodNearest } from "../outline/sweepOutline.ts";
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
  const nearestAt = rodContactOver({ crank, outline, obstacle: cylinderObstacle(geometry) });
  return Array.from({ length: count }, (_, i) => nearestAt((2 * Math.PI * i) / count));
}
