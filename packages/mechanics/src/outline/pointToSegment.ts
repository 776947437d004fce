/**
 * Distance of the point (x, y) from the segment a to b [m]. Plain numbers, as it is asked for by the thousand.
 *
 * Source: plane geometry.
 */
export function pointToSegment(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((x - ax) * dx + (y - ay) * dy) / square;
  const t = Math.min(1, Math.max(0, along));
  const [ex, ey] = [x - ax - t * dx, y - ay - t * dy];
  return Math.sqrt(ex * ex + ey * ey);
}
