import { finite, requireAll } from "../check/requireAll.ts";
import { topDeadCentre } from "./deadCentres.ts";
import type { SliderCrank } from "./SliderCrank.ts";

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
  const { height } = topDeadCentre(crank);
  const { throwRadius: r, rodLength: l, pinLineOffset: e } = crank;
  return (angle) => {
    const across = r * Math.sin(angle) - e;
    return height - r * Math.cos(angle) - Math.sqrt(l * l - across * across);
  };
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
