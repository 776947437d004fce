import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";

/**
 * Greatest shear stress in the wire of a helical spring, at the inside of the coil:
 * tau = K 8 F D / (pi d^3) with Wahl's factor K = (4 C - 1) / (4 C - 4) + 0.615 / C and C = D / d.
 * @param input.force share of this spring alone [N], >= 0
 * @param input.wireDiameter d [m], > 0
 * @param input.meanDiameter of the coil D [m], more than the wire's: the coil has a hole
 * @returns shear stress [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: Wahl, Mechanical Springs.
 */
export function springShearStress(input: {
  force: number;
  wireDiameter: number;
  meanDiameter: number;
}): number {
  const { force, wireDiameter, meanDiameter } = input;
  requireAll(notNegative, { force });
  requireAll(positive, { wireDiameter, meanDiameter });
  const index = meanDiameter / wireDiameter;
  requireThat(index > 1, "meanDiameter", meanDiameter, `more than wireDiameter = ${wireDiameter}`);
  const factor = (4 * index - 1) / (4 * index - 4) + 0.615 / index;
  return (factor * 8 * force * meanDiameter) / (Math.PI * wireDiameter ** 3);
}
