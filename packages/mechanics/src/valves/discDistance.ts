/** A flat round disc in space, its axis in the plane of x and z. */
export interface Disc {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** of its axis against z [rad], + towards x */
  readonly tilt: number;
  readonly radius: number;
}

/** A direction: within the plane of x and z from z towards x [rad], and out of it towards y [rad]. */
export interface Direction {
  readonly turn: number;
  readonly rise: number;
}

/**
 * How far two discs lie apart along a direction: never more than their distance, so a bound from below.
 * @param first disc [m]
 * @param second the other [m]
 * @param towards direction from the second to the first [rad]
 * @returns [m], - when they overlap seen square to the direction
 *
 * Source: plane geometry, the width of a disc along a direction.
 */
export function apartAlong(first: Disc, second: Disc, { turn, rise }: Direction): number {
  const flat = Math.cos(rise);
  const between =
    flat * ((first.x - second.x) * Math.sin(turn) + (first.z - second.z) * Math.cos(turn)) +
    Math.sin(rise) * (first.y - second.y);
  const half = ({ tilt, radius }: Disc) =>
    radius * Math.sqrt(Math.max(0, 1 - (flat * Math.cos(turn - tilt)) ** 2));
  return between - half(first) - half(second);
}

/** Where the search steps end [rad]: the bound is flat at its top, so the distance is then right to a nanometre. */
const FINEST = 1e-7;
const COARSEST = 0.4;
/** Starts for discs that cross, whose bound may have several tops. */
const ALL_ROUND: readonly Direction[] = Array.from({ length: 24 }, (_, i) => ({
  turn: ((i % 8) * Math.PI) / 4,
  rise: (Math.floor(i / 8) - 1) * 0.8,
}));

function climb(first: Disc, second: Disc, from: Direction): { towards: Direction; value: number } {
  let [towards, value] = [from, apartAlong(first, second, from)];
  for (let step = COARSEST; step > FINEST; ) {
    const { turn, rise } = towards;
    const next = [
      { turn: turn + step, rise },
      { turn: turn - step, rise },
      { turn, rise: rise + step },
      { turn, rise: rise - step },
      { turn: turn + step, rise: rise + step },
      { turn: turn - step, rise: rise - step },
    ];
    const values = next.map((one) => apartAlong(first, second, one));
    const best = Math.max(...values);
    if (best > value) [towards, value] = [next[values.indexOf(best)]!, best];
    else step /= 2;
  }
  return { towards, value };
}

/**
 * Distance between two discs in space; where they cross, less than zero by the shortest move that parts them: the
 * greatest over all directions of how far they lie apart along it.
 * @param first disc [m]
 * @param second the other [m]
 * @param from direction near which to begin
 * @returns distance [m], - when they cross, and the direction in which they lie apart
 *
 * Source: plane geometry, distance of convex bodies by their widths.
 */
export function discDistance(
  first: Disc,
  second: Disc,
  from: Direction,
): { towards: Direction; value: number } {
  const found = climb(first, second, from);
  // Apart, the bound has one top; crossing, several.
  if (found.value > 0) return found;
  const all = [found, ...ALL_ROUND.map((start) => climb(first, second, start))];
  return all.reduce((best, one) => (one.value > best.value ? one : best));
}
