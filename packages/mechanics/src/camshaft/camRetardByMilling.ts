import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Crank angle by which an overhead camshaft falls back when block or head is milled: the driving run of its
 * chain or belt grows shorter by m cos(gamma), the tensioner takes up the slack side, and the camshaft turns
 * back by that length over the radius of the crankshaft's sprocket.
 * @param input.removedHeight taken off deck and head together, along the cylinder m [m], >= 0
 * @param input.runAngle driving run against the cylinder axis gamma [rad], 0 up to a quarter turn; 0 for a
 * single run parallel to the cylinders
 * @param input.crankSprocketRadius pitch radius [m], > 0
 * @returns retard [rad of the crankshaft], >= 0
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function camRetardByMilling(input: {
  removedHeight: number;
  runAngle: number;
  crankSprocketRadius: number;
}): number {
  const { removedHeight, runAngle, crankSprocketRadius } = input;
  requireAll(notNegative, { removedHeight });
  requireAll({ atLeast: 0, below: Math.PI / 2 }, { runAngle });
  requireAll(positive, { crankSprocketRadius });
  return (removedHeight * Math.cos(runAngle)) / crankSprocketRadius;
}
