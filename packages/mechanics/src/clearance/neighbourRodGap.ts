import {
  finite,
  notNegative,
  positive,
  requireAll,
  requireCounts,
  requireThat,
} from "../check/requireAll.ts";

/** Rods along a crankshaft. */
export interface RodsAlong {
  /** places of the cylinder axes along the crankshaft [m], in any order */
  readonly positions: readonly number[];
  /** rods that share a crankpin, a whole number that the cylinders can be shared out by */
  readonly rodsPerPin: number;
  /** width of a big end along the crankshaft [m], > 0 */
  readonly rodWidth: number;
  /** distance of a rod's middle plane from its cylinder's axis, whichever way [m], >= 0 */
  readonly planeOffset: number;
}

/**
 * Least distance along the crankshaft between the big ends of rods on neighbouring crankpins, each rod standing off
 * its cylinder's axis towards the other. Webs and main bearings have to lie in it. Rods of one crankpin are left out:
 * their gap is the side clearance.
 * @param rods places and sizes
 * @returns distance [m], negative when the rods would overlap
 * @throws RangeError when a value is out of range or there is only one crankpin
 *
 * Source: plane geometry.
 */
export function neighbourRodGap({ positions, rodsPerPin, rodWidth, planeOffset }: RodsAlong): number {
  requireAll(positive, { rodWidth });
  requireAll(notNegative, { planeOffset });
  requireCounts({ rodsPerPin });
  for (const position of positions) requireAll(finite, { positions: position });
  requireThat(
    positions.length > rodsPerPin && positions.length % rodsPerPin === 0,
    "positions",
    positions.length,
    `twice ${rodsPerPin} cylinders or more, in whole crankpins`,
  );
  const along = [...positions].sort((a, b) => a - b);
  const gaps = along.flatMap((place, index) =>
    index > 0 && index % rodsPerPin === 0 ? [place - along[index - 1]!] : [],
  );
  return Math.min(...gaps) - rodWidth - 2 * planeOffset;
}
