import { finite, positive, requireAll } from "../check/requireAll.ts";
import { leastOnInterval } from "../outline/leastOnInterval.ts";
import { boreHalfChord } from "./rodToCylinderChordClearance.ts";
import { cylinderObstacle, type RodToCylinder } from "./rodToCylinderObstacle.ts";

/** The disc the big end stays inside, and the cylinder above it. */
export interface BigEndDisc
  extends Pick<
    RodToCylinder,
    "bore" | "cylinderAxisOffset" | "cylinderBottomHeight" | "bigEndWidth" | "planeOffset"
  > {
  /** crank throw r [m] */
  readonly throwRadius: number;
  /** farthest point of the big end from its centre [m]: outlineFarthestPoint */
  readonly bigEndRadius: number;
}

/**
 * Clearance of the disc about the crank axis that the big end never leaves. Positive proves the big end
 * clear (not the beam) and is never larger than its clearance; negative says only that a sweep is needed.
 * To the edge of the bore in the plane of the rod's side face the disc has hypot(chord/2, height) - r - R;
 * while that is positive it can exceed the true way, which runs square to the round wall, so then the
 * least true distance of the rim is returned. Both forms are 0 together.
 * @param disc throw, big-end radius, bore and height of its lower edge [m], no notch
 * @returns clearance of the disc [m]
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function screeningDisc(disc: BigEndDisc): number {
  const { throwRadius, bigEndRadius, cylinderAxisOffset, cylinderBottomHeight } = disc;
  requireAll(positive, { throwRadius, bigEndRadius, cylinderBottomHeight });
  requireAll(finite, { cylinderAxisOffset });
  const rim = throwRadius + bigEndRadius;
  const edge = Math.max(0, boreHalfChord(disc) - Math.abs(cylinderAxisOffset));
  const inPlane = Math.hypot(edge, cylinderBottomHeight) - rim;
  if (inPlane <= 0) return inPlane;
  const ways = cylinderObstacle(disc).map((distance) => {
    const atRim = (angle: number): number => distance(rim * Math.sin(angle), rim * Math.cos(angle));
    return leastOnInterval(atRim, 0, 2 * Math.PI, 360).value;
  });
  return Math.min(...ways);
}
