/**
 * Signed distance to a corner of metal that fills dx <= 0, dy <= 0: the way round the corner where both
 * are free, the larger of the two elsewhere. Below zero it is the shorter way back out.
 * It grows with dx and with dy and never changes by more than the distance moved.
 * @param dx free distance across [m], negative inside the metal
 * @param dy free distance along [m], negative inside the metal
 *
 * Source: plane geometry.
 */
export function cornerDistance(dx: number, dy: number): number {
  return dx > 0 && dy > 0 ? Math.sqrt(dx * dx + dy * dy) : Math.max(dx, dy);
}
