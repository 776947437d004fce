import { finite, positive, requireAll } from "../check/requireAll.ts";

/**
 * Compression of a main cap by the interference of its register, E delta / w, the block taken as rigid: an
 * upper bound.
 * @param input.elasticModulus of the cap [Pa], > 0
 * @param input.interference cap wider than its register [m], - for clearance
 * @param input.width of the register [m], > 0
 * @returns compressive stress [Pa], 0 with clearance
 * @throws RangeError when a value is out of range
 *
 * Source: definition (elastic strain).
 */
export function registerStress(input: {
  elasticModulus: number;
  interference: number;
  width: number;
}): number {
  const { elasticModulus, interference, width } = input;
  requireAll(positive, { elasticModulus, width });
  requireAll(finite, { interference });
  return (elasticModulus * Math.max(0, interference)) / width;
}
