import { notNegative, requireAll } from "../check/requireAll.ts";
import { crankAngleOfHeight } from "./crankAngleOfHeight.ts";
import { topDeadCentre } from "./deadCentres.ts";
import type { SliderCrank } from "./SliderCrank.ts";

/**
 * Crank angle the piston spends within a given distance of top dead centre.
 * @param crank the mechanism
 * @param travel distance from top dead centre [m], 0 up to the stroke
 * @returns crank angle [rad]
 * @throws RangeError when the distance is negative or longer than the stroke
 *
 * Source: plane geometry.
 */
export function dwellAtTopDeadCentre(crank: SliderCrank, travel: number): number {
  requireAll(notNegative, { travel });
  const height = topDeadCentre(crank).height - travel;
  return crankAngleOfHeight(crank, height, "down") - crankAngleOfHeight(crank, height, "up");
}
