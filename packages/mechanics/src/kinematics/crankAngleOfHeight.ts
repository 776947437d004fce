import { finite, requireAll, requireThat } from "../check/requireAll.ts";
import { bottomDeadCentre, topDeadCentre } from "./deadCentres.ts";
import type { SliderCrank } from "./SliderCrank.ts";

/**
 * Crank angle at which the pin stands at a given height, from the triangle crank axis - crankpin - pin:
 * theta = atan2(e, y) +- acos((r^2 + R^2 - l^2) / (2 r R)), R = hypot(e, y).
 * @param crank the mechanism
 * @param height pin height above the crank axis [m], between bottom and top dead centre
 * @param direction "down" for the stroke after top dead centre, "up" for the stroke before it
 * @returns crank angle [rad]: "down" at or after the top dead centre angle, "up" at or before it
 * @throws RangeError when the pin never stands at that height
 *
 * Source: plane geometry.
 */
export function crankAngleOfHeight(crank: SliderCrank, height: number, direction: "down" | "up"): number {
  requireAll(finite, { height });
  const top = topDeadCentre(crank).height;
  const bottom = bottomDeadCentre(crank).height;
  requireThat(height >= bottom && height <= top, "height", height, `between ${bottom} and ${top}`);
  const { throwRadius: r, rodLength: l, pinLineOffset: e } = crank;
  const distance = Math.hypot(e, height);
  // Rounding can push the cosine past 1 by one digit at the dead centres.
  const cosine = (r ** 2 + distance ** 2 - l ** 2) / (2 * r * distance);
  const opening = Math.acos(Math.min(1, Math.max(-1, cosine)));
  return Math.atan2(e, height) + (direction === "down" ? opening : -opening);
}
