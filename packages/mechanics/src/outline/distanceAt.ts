import { curveU, curveV, type OutlineCurve } from "./OutlineCurve.ts";
import type { RodFrame } from "./rodFrame.ts";

/**
 * Signed distance [m] from a point of the cylinder's frame to one part of an obstacle: positive free,
 * negative inside. It must never change by more than the distance moved, or the sweep can miss the
 * least value; and a part should not be hollow towards the rod: an obstacle on both sides is two parts.
 */
export type DistanceToObstacle = (x: number, y: number) => number;

/** Distance from the point at t on a curve, with the rod at a frame, to one part of an obstacle. */
export function distanceAt(
  frame: RodFrame,
  curve: OutlineCurve,
  t: number,
  distance: DistanceToObstacle,
): number {
  const u = curveU(curve, t);
  const v = curveV(curve, t);
  return distance(frame.x - u * frame.sin + v * frame.cos, frame.y + u * frame.cos + v * frame.sin);
}
