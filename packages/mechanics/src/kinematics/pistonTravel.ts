import { finite, requireAll } from "../check/requireAll.ts";
import { topDeadCentre } from "./deadCentres.ts";
import type { SliderCrank } from "./SliderCrank.ts";

/**
 * {@link pistonTravelOver} by sine and cosine of the crank angle, for who has these in a table.
 * @param crank the mechanism
 * @returns sine and cosine → travel s [m], from 0 to the stroke
 * @throws RangeError when the mechanism cannot turn
 *
 * Source: plane geometry.
 */
export function pistonTravelBy(crank: SliderCrank): (sine: number, cosine: number) => number {
  const { height } = topDeadCentre(crank);
  const { throwRadius: r, rodLength: l, pinLineOffset: e } = crank;
  return (sine, cosine) => {
    const across = r * sine - e;
    return height - r * cosine - Math.sqrt(l * l - across * across);
  };
}

/**
 * Distance the piston stands below its top dead centre, as a function of the crank angle, checked once: for
 * sweeps.
 * @param crank the mechanism
 * @returns crank angle [rad] → travel s [m], from 0 to the stroke
 * @throws RangeError when the mechanism cannot turn
 *
 * Source: plane geometry.
 */
export function pistonTravelOver(crank: SliderCrank): (angle: number) => number {
  const travel = pistonTravelBy(crank);
  return (angle) => travel(Math.sin(angle), Math.cos(angle));
}

/**
 * Distance the piston stands below its top dead centre.
 * @param crank the mechanism
 * @param angle crank angle [rad]
 * @returns travel s [m], from 0 to the stroke
 * @throws RangeError when the mechanism cannot turn or the angle is not finite
 *
 * Source: plane geometry.
 */
export function pistonTravel(crank: SliderCrank, angle: number): number {
  requireAll(finite, { angle });
  return pistonTravelOver(crank)(angle);
}
