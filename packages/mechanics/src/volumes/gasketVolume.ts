import { positive, requireAll } from "../check/requireAll.ts";
import { boreArea } from "./boreArea.ts";

/**
 * Volume inside the opening of the head gasket.
 * @param input.gasketBore diameter of a round opening [m], > 0
 * @param input.compressedThickness thickness under clamp load [m], > 0; the free thickness gives too much
 * @returns volume [m3]
 * @throws RangeError when a value is not above zero
 *
 * Source: definition.
 */
export function gasketVolume(input: { gasketBore: number; compressedThickness: number }): number {
  const { gasketBore, compressedThickness } = input;
  requireAll(positive, { gasketBore, compressedThickness });
  return boreArea(gasketBore) * compressedThickness;
}
