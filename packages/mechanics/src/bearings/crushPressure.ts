import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Hoop compression of a pair of half shells squeezed into a rigid housing, 2 E a_c / (pi D_H). The housing
 * gives way, so this is an upper bound.
 * @param input.crush height by which each half shell stands proud [m], >= 0
 * @param input.housingBore [m], > 0
 * @param input.elasticModulus of the shell's backing [Pa], > 0
 * @returns compressive stress [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: ISO 6524 terms; thin ring.
 */
export function crushStress(input: { crush: number; housingBore: number; elasticModulus: number }): number {
  const { crush, housingBore, elasticModulus } = input;
  requireAll(notNegative, { crush });
  requireAll(positive, { housingBore, elasticModulus });
  return (2 * elasticModulus * crush) / (Math.PI * housingBore);
}

/**
 * Radial pressure that holds the shells in the housing, 2 sigma t / D_H; an upper bound like the stress.
 * @param input.crush height by which each half shell stands proud [m], >= 0
 * @param input.housingBore [m], > 0
 * @param input.shellWall [m], > 0
 * @param input.elasticModulus of the shell's backing [Pa], > 0
 * @returns pressure [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: ISO 6524 terms; thin ring.
 */
export function crushPressure(input: {
  crush: number;
  housingBore: number;
  shellWall: number;
  elasticModulus: number;
}): number {
  requireAll(positive, { shellWall: input.shellWall });
  return (2 * crushStress(input) * input.shellWall) / input.housingBore;
}
