import { type RodNearest, sweepOutline } from "../outline/sweepOutline.ts";
import { boreHollow, cylinderObstacle, type RodToCylinder } from "./rodToCylinderObstacle.ts";

/**
 * Least clearance between the connecting rod and the bottom of its cylinder over a turn.
 * The parts are rigid and without play. Overlap comes out negative, as the shorter of the ways back
 * across and back down. What it says holds for the very rod and block measured: follow the instructions
 * of the rod's maker, and turn the assembled engine by hand, plugs out, before it is run.
 * @param geometry mechanism, outline, bore, notch; the pin line lies at pinLineOffset = cylinderAxisOffset
 *   less the pin offset towards the major thrust face
 * @returns clearance [m], crank angle [rad] and the rod's nearest point
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry; wanted clearances are common practice.
 */
export function rodToCylinderBottom(geometry: RodToCylinder): RodNearest {
  const { crank, outline } = geometry;
  return sweepOutline({
    crank,
    outline,
    obstacle: cylinderObstacle(geometry),
    hollow: boreHollow(geometry),
  });
}
