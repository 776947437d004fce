import { positive, requireAll, requireThat } from "../check/requireAll.ts";
import { boreArea } from "./boreArea.ts";

/**
 * Crevice between the bore and the top land, cold. It shrinks as the land warms up.
 * @param input.bore finished bore [m], > 0
 * @param input.topLandDiameter diameter of the top land [m], > 0 and below the bore
 * @param input.topLandHeight height from the crown edge to the top ring groove [m], > 0
 * @returns volume [m3]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals (crevices).
 */
export function topLandVolume(input: {
  bore: number;
  topLandDiameter: number;
  topLandHeight: number;
}): number {
  const { bore, topLandDiameter, topLandHeight } = input;
  requireAll(positive, { bore, topLandDiameter, topLandHeight });
  requireThat(topLandDiameter < bore, "topLandDiameter", topLandDiameter, `below the bore ${bore}`);
  return (boreArea(bore) - boreArea(topLandDiameter)) * topLandHeight;
}
