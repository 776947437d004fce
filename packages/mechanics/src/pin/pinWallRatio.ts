import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";

/**
 * Bore of the pin over its diameter: the lower, the thicker the wall and the less the pin ovalises.
 * @param input.pinDiameter outside diameter [m], > 0
 * @param input.pinBore inside diameter [m], 0 for a solid pin, below the outside diameter
 * @returns ratio [-], 0 up to 1
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function pinWallRatio(input: { pinDiameter: number; pinBore: number }): number {
  const { pinDiameter, pinBore } = input;
  requireAll(positive, { pinDiameter });
  requireAll(notNegative, { pinBore });
  requireThat(pinBore < pinDiameter, "pinBore", pinBore, `below the pin diameter ${pinDiameter}`);
  return pinBore / pinDiameter;
}
