import { curveU, curveV, type OutlineCurve } from "./OutlineCurve.ts";
import type { RodFrame } from "./rodFrame.ts";
import type { WriteDistance } from "./SteepDistance.ts";

/**
 * Signed distance [m] from a point of the cylinder's frame to one part of an obstacle: positive free,
 * negative inside. It must never change by more than the distance moved, or the sweep can miss the
 * least value; and a part should not be hollow towards the rod: an obstacle on both sides is two parts.
 * What moves by itself, such as a lobe, also takes the crank angle [rad].
 */
export interface DistanceToObstacle {
  (x: number, y: number, angle: number): number;
  /** no point of the rod can be nearer to this part than so [m]; left out where the part says nothing of it */
  readonly least?: number;
  /** see {@link DistanceToFixedObstacle} */
  readonly write?: WriteDistance;
}

/** The same to a part that stands still. */
export interface DistanceToFixedObstacle {
  (x: number, y: number): number;
  readonly least?: number;
  /** writes the distance with its slope; left out where the slope is not known, and is then taken by differences */
  readonly write?: WriteDistance;
}

/** Distance from the point at t on a curve, with the rod at a frame, to one part of an obstacle. */
export function distanceAt(
  frame: RodFrame,
  curve: OutlineCurve,
  t: number,
  distance: DistanceToObstacle,
): number {
  const u = curveU(curve, t);
  const v = curveV(curve, t);
  const x = frame.x - u * frame.sin + v * frame.cos;
  return distance(x, frame.y + u * frame.cos + v * frame.sin, frame.angle);
}
