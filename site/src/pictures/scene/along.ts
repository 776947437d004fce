import type { Point } from "./Scene.ts";

/** The point so far along a way from another; the way is of unit length. */
export const along = (from: Point, way: Point, length: number): Point => ({
  x: from.x + way.x * length,
  y: from.y + way.y * length,
});
