/** Places of the numbers that a {@link WriteDistance} reads and writes. */
export const X = 0;
export const Y = 1;
export const DISTANCE = 2;
export const STEEP_X = 3;
export const STEEP_Y = 4;
/** Room that they take. */
export const PLACES = 5;

/**
 * Reads a point [m] and writes the signed distance [m] to a part of an obstacle and its slope by x and by y [-]; on an
 * edge, where two slopes meet, either of them. In one array, for numbers that are handed over one by one are dear.
 */
export type WriteDistance = (numbers: Float64Array) => void;

/** Way over which the slope of a distance is taken where none is written [m]: far below any part, far above rounding. */
const STEP = 1e-9;

/**
 * A distance as a function of a point, from what writes it.
 * @param write what writes distance and slope
 * @param more what the distance says of itself besides
 * @returns the distance [m] by x and y [m], which keeps what writes it
 * @throws never: what `write` throws comes through
 *
 * Source: definition.
 */
export function steepDistance<More extends object>(write: WriteDistance, more: More) {
  const own = new Float64Array(PLACES);
  const distance = (x: number, y: number): number => {
    own[X] = x;
    own[Y] = y;
    write(own);
    return own[DISTANCE]!;
  };
  return Object.assign(distance, { ...more, write });
}

/**
 * What writes a distance and its slope: the distance's own, or one by differences.
 * @param distance to a part that stands still
 * @returns what writes it
 * @throws never: what the distance throws comes through
 *
 * Source: central differences, numerical practice.
 */
export function writeDistance(
  distance: ((x: number, y: number, angle: number) => number) & { readonly write?: WriteDistance },
): WriteDistance {
  return (
    distance.write ??
    ((n) => {
      const x = n[X]!;
      const y = n[Y]!;
      n[DISTANCE] = distance(x, y, 0);
      n[STEEP_X] = (distance(x + STEP, y, 0) - distance(x - STEP, y, 0)) / (2 * STEP);
      n[STEEP_Y] = (distance(x, y + STEP, 0) - distance(x, y - STEP, 0)) / (2 * STEP);
    })
  );
}

/**
 * Writes `cornerDistance` and its slope.
 * @param n the numbers to write to
 * @param dx free distance across [m], and its slope by x
 * @param dy free distance along [m], and its slope by y
 * @throws never: any numbers will do
 *
 * Source: as `cornerDistance`.
 */
export function writeCorner(n: Float64Array, dx: number, steepX: number, dy: number, steepY: number): void {
  if (dx > 0 && dy > 0) {
    const way = Math.sqrt(dx * dx + dy * dy);
    n[DISTANCE] = way;
    n[STEEP_X] = (dx / way) * steepX;
    n[STEEP_Y] = (dy / way) * steepY;
  } else if (dx >= dy) {
    n[DISTANCE] = dx;
    n[STEEP_X] = steepX;
    n[STEEP_Y] = 0;
  } else {
    n[DISTANCE] = dy;
    n[STEEP_X] = 0;
    n[STEEP_Y] = steepY;
  }
}

/**
 * What writes the distance to a part that is given in an upright frame, in a frame that leans from it.
 * @param write in the upright frame
 * @param tilt of the leaning frame [rad], + with the rotation of the crankshaft
 * @returns what writes it in the leaning frame
 * @throws never itself; what `write` throws comes through
 *
 * Source: plane geometry: distances stay distances, and slopes turn with the frame.
 */
export function writeFromLeaningFrame(write: WriteDistance, tilt: number): WriteDistance {
  const [sin, cos] = [Math.sin(tilt), Math.cos(tilt)];
  return (n) => {
    const x = n[X]!;
    const y = n[Y]!;
    n[X] = x * cos + y * sin;
    n[Y] = y * cos - x * sin;
    write(n);
    const steepX = n[STEEP_X]!;
    const steepY = n[STEEP_Y]!;
    n[STEEP_X] = steepX * cos - steepY * sin;
    n[STEEP_Y] = steepX * sin + steepY * cos;
    n[X] = x;
    n[Y] = y;
  };
}
