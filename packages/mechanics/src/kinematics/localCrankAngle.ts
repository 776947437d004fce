import { finite, requireAll } from "../check/requireAll.ts";

/**
 * Crank angle seen by one cylinder: theta_k = theta + pin angle - bank angle. Every cylinder is then computed
 * in its own frame, in which its throw lies along its own axis at 0.
 * @param input.crankAngle engine crank angle [rad], positive with rotation
 * @param input.pinAngle angle of this cylinder's crankpin on the crankshaft [rad], positive with rotation
 * @param input.bankAngle angle of this cylinder's axis from the reference axis [rad], positive with rotation
 * @returns local crank angle [rad], not reduced to one turn
 * @throws RangeError when a value is not finite
 *
 * Source: plane geometry.
 */
export function localCrankAngle(input: { crankAngle: number; pinAngle: number; bankAngle: number }): number {
  const { crankAngle, pinAngle, bankAngle } = input;
  requireAll(finite, { crankAngle, pinAngle, bankAngle });
  return crankAngle + pinAngle - bankAngle;
}
