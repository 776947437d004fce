import { notNegative, requireAll } from "../check/requireAll.ts";
import { nearerThan, type RodNearest } from "../outline/sweepOutline.ts";
import { boreHalfChord } from "./rodToCylinderChordClearance.ts";
import {
  boreHollow,
  cylinderObstacle,
  type RodNotch,
  type RodToCylinder,
  sideFaceDistance,
} from "./rodToCylinderObstacle.ts";

/** What a notch is wanted for: the geometry without it, what is fixed of the notch, and the clearance. */
export interface NotchRequest<Open extends "depth" | "height"> extends Omit<RodToCylinder, "notch"> {
  readonly notch: Omit<RodNotch, Open>;
  /** clearance wanted [m] */
  readonly wanted: number;
}

/** Sizes are found to this [m]: a hundredth of what anybody grinds to. */
const resolution = 1e-7;
/** Steps are few, as each uses the very point that is too near; more would mean that they do not close in. */
const mostSteps = 60;

/** Size that just gives the rod's nearest point the clearance wanted from the part that this size moves. */
type SizeFor = (nearest: RodNearest, wanted: number) => number;

function across(geometry: Omit<RodToCylinder, "notch">, { point }: RodNearest): number {
  return Math.abs(point.x - geometry.cylinderAxisOffset);
}

/** How far a corner must stand back on one way when the other way already gives so much. */
function standBack(wanted: number, other: number): number {
  return Math.sqrt(Math.max(0, wanted * wanted - Math.max(0, other) ** 2));
}

function leastThatClears(request: NotchRequest<never>, open: "depth" | "height", sizeFor: SizeFor): number {
  const { wanted, notch, ...geometry } = request;
  requireAll(notNegative, { wanted });
  const { crank, outline } = geometry;
  const hollow = boreHollow(geometry);
  const sweepWith = (cut: RodNotch | undefined) => ({
    crank,
    outline,
    obstacle: cylinderObstacle({ ...geometry, notch: cut }),
    hollow,
  });
  let nearest = nearerThan(sweepWith(undefined), wanted);
  if (nearest === undefined) return 0;
  // A size that leaves one point too near is too small, and the size that just clears that point is never too
  // large: the sizes climb to the least that clears every point.
  let size = 0;
  for (let step = 0; step < mostSteps; step++) {
    const next = Math.max(sizeFor(nearest, wanted), size) + resolution / 2;
    nearest = nearerThan(sweepWith({ ...notch, [open]: next }), wanted);
    if (nearest === undefined) return next;
    // The nearest point is then held by another part of the notch, which this size does not move.
    if (step > 0 && sizeFor(nearest, wanted) <= size) return Number.POSITIVE_INFINITY;
    size = next;
  }
  return Number.POSITIVE_INFINITY;
}

/** What a corner radius takes off depth and height of the open notch. */
function lostToCorner({ cornerRadius = 0 }: Pick<RodNotch, "cornerRadius">): number {
  return (1 - Math.SQRT1_2) * cornerRadius;
}

/**
 * Least depth of a notch of given height and width that gives the clearance wanted. The clearance never
 * falls as the notch gets deeper. It says nothing of the wall left behind the
 * notch: measure that, and have whoever machines the block agree to it.
 * @param request geometry, notch without its depth, clearance wanted [m]
 * @returns depth [m] that gives the clearance, to 0.1 um; 0 when no notch is needed; Infinity when a notch of
 *   this height and width cannot give it at any depth
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function notchDepthNeeded(request: NotchRequest<"depth">): number {
  const chord = boreHalfChord(request);
  const lost = lostToCorner(request.notch);
  const depthFor: SizeFor = (nearest, wanted) => {
    const below = request.cylinderBottomHeight - nearest.point.y;
    return across(request, nearest) + standBack(wanted, below) - chord + lost;
  };
  return leastThatClears({ ...request, notch: { ...request.notch, depth: 0 } }, "depth", depthFor);
}

/**
 * Least height of a notch of given depth and width that gives the clearance wanted.
 * @param request geometry, notch without its height, clearance wanted [m]
 * @returns height [m] that gives the clearance, to 0.1 um; 0 when no notch is needed, Infinity when a
 *   notch of this depth and width cannot give it at any height
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function notchHeightNeeded(request: NotchRequest<"height">): number {
  const face = sideFaceDistance(request);
  const lost = lostToCorner(request.notch);
  const heightFor: SizeFor = (nearest, wanted) => {
    const toWall = request.bore / 2 - Math.hypot(across(request, nearest), face);
    return nearest.point.y + standBack(wanted, toWall) - request.cylinderBottomHeight + lost;
  };
  return leastThatClears({ ...request, notch: { ...request.notch, height: 0 } }, "height", heightFor);
}
