import { bottomDeadCentre, topDeadCentre } from "./deadCentres.ts";
import type { SliderCrank } from "./SliderCrank.ts";

/**
 * True piston stroke S, top to bottom dead centre. It is 2 r without an offset and longer with one, so the
 * stroke on the crankshaft's sheet is not the piston stroke of an offset engine.
 * @param crank the mechanism
 * @returns stroke [m], at least 2 r
 * @throws RangeError when the mechanism cannot turn
 *
 * Source: plane geometry.
 */
export function pistonStroke(crank: SliderCrank): number {
  return topDeadCentre(crank).height - bottomDeadCentre(crank).height;
}
