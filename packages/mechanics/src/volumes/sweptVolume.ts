import { positive, requireAll, requireCounts } from "../check/requireAll.ts";
import { boreArea } from "./boreArea.ts";

/**
 * Swept volume of one cylinder.
 * @param input.bore finished bore [m], > 0
 * @param input.stroke true piston stroke [m], > 0; longer than twice the throw when the pin line is offset
 * @returns swept volume [m3]
 * @throws RangeError when a value is not above zero
 *
 * Source: definition.
 */
export function sweptVolume(input: { bore: number; stroke: number }): number {
  requireAll(positive, { stroke: input.stroke });
  return boreArea(input.bore) * input.stroke;
}

/**
 * Displacement of the whole engine.
 * @param input.bore finished bore [m], > 0
 * @param input.stroke true piston stroke [m], > 0
 * @param input.cylinders number of cylinders, a whole number from 1
 * @returns displacement [m3]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function engineDisplacement(input: { bore: number; stroke: number; cylinders: number }): number {
  const { cylinders } = input;
  requireCounts({ cylinders });
  return cylinders * sweptVolume(input);
}
