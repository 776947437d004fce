import { requireSliderCrank, type SliderCrank } from "./SliderCrank.ts";

/** The pin at the end of its travel. */
export interface DeadCentre {
  /** pin height above the crank axis [m] */
  readonly height: number;
  /** crank angle at which it is reached [rad] */
  readonly angle: number;
}

/**
 * Top dead centre: throw and rod in one line, y = sqrt((l + r)^2 - e^2) at sin(theta) = e / (l + r).
 * @param crank the mechanism
 * @returns pin height [m] and crank angle [rad]; the angle is 0 only without an offset
 * @throws RangeError when the mechanism cannot turn
 *
 * Source: plane geometry.
 */
export function topDeadCentre(crank: SliderCrank): DeadCentre {
  requireSliderCrank(crank);
  const reach = crank.rodLength + crank.throwRadius;
  return {
    height: Math.sqrt(reach ** 2 - crank.pinLineOffset ** 2),
    angle: Math.asin(crank.pinLineOffset / reach),
  };
}

/**
 * Bottom dead centre: the rod folded back over the throw, y = sqrt((l - r)^2 - e^2) at
 * theta = pi + asin(e / (l - r)).
 * @param crank the mechanism
 * @returns pin height [m] and crank angle [rad]
 * @throws RangeError when the mechanism cannot turn
 *
 * Source: plane geometry.
 */
export function bottomDeadCentre(crank: SliderCrank): DeadCentre {
  requireSliderCrank(crank);
  const reach = crank.rodLength - crank.throwRadius;
  return {
    height: Math.sqrt(reach ** 2 - crank.pinLineOffset ** 2),
    angle: Math.PI + Math.asin(crank.pinLineOffset / reach),
  };
}
