import { finite, requireAll } from "../check/requireAll.ts";
import { pointToSegment } from "../outline/pointToSegment.ts";

/** A straight line from a to b in a plane [m]. */
export interface Segment {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

/** Distance of a point from the line through a segment [m], + on its left. */
function sideOf(x: number, y: number, { ax, ay, bx, by }: Segment): number {
  return ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay);
}

/**
 * Distance between two segments of a plane; where they cross, less than zero by the shortest move that parts
 * them.
 * @param first one segment [m]
 * @param second the other [m]
 * @returns distance [m], - when they cross
 * @throws RangeError when a coordinate is not finite
 *
 * Source: plane geometry.
 */
export function segmentDistance(first: Segment, second: Segment): number {
  if (!Number.isFinite(first.ax + first.ay + first.bx + first.by)) requireAll(finite, { ...first });
  if (!Number.isFinite(second.ax + second.ay + second.bx + second.by)) requireAll(finite, { ...second });
  const offSecond = [sideOf(first.ax, first.ay, second), sideOf(first.bx, first.by, second)] as const;
  const offFirst = [sideOf(second.ax, second.ay, first), sideOf(second.bx, second.by, first)] as const;
  if (offSecond[0] * offSecond[1] < 0 && offFirst[0] * offFirst[1] < 0) {
    return -Math.min(...[...offSecond, ...offFirst].map(Math.abs));
  }
  return Math.min(
    pointToSegment(first.ax, first.ay, second.ax, second.ay, second.bx, second.by),
    pointToSegment(first.bx, first.by, second.ax, second.ay, second.bx, second.by),
    pointToSegment(second.ax, second.ay, first.ax, first.ay, first.bx, first.by),
    pointToSegment(second.bx, second.by, first.ax, first.ay, first.bx, first.by),
  );
}
