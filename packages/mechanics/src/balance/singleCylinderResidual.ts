import { finite, notNegative, positive, requireAll, share } from "../check/requireAll.ts";

interface Single {
  /** of the cylinder [kg], >= 0 */
  readonly reciprocatingMass: number;
  /** [m], > 0 */
  readonly throwRadius: number;
  /** crankshaft speed [rad/s], constant */
  readonly angularSpeed: number;
  /** share f_b of the reciprocating mass that the counterweight balances [-], 0 to 1 */
  readonly balanceFactor: number;
}

/**
 * Greatest primary forces left over in a single whose counterweight balances all that rotates and a share of
 * what reciprocates: (1 - f_b) m r omega^2 along the cylinder and f_b m r omega^2 across it. The second order,
 * about r/l of m r omega^2 along the cylinder, stays whatever the counterweight.
 * @param input.reciprocatingMass of the cylinder [kg], >= 0
 * @param input.throwRadius [m], > 0
 * @param input.angularSpeed crankshaft speed [rad/s], constant
 * @param input.balanceFactor share f_b of the reciprocating mass balanced [-], 0 to 1
 * @returns along and across the cylinder [N], sizes
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function singleCylinderResidual(input: Single): { along: number; across: number } {
  const { reciprocatingMass, throwRadius, angularSpeed, balanceFactor } = input;
  requireAll(notNegative, { reciprocatingMass });
  requireAll(positive, { throwRadius });
  requireAll(finite, { angularSpeed });
  requireAll(share, { balanceFactor });
  const whole = reciprocatingMass * throwRadius * angularSpeed ** 2;
  return { along: (1 - balanceFactor) * whole, across: balanceFactor * whole };
}

/**
 * Primary forces left over in a single at one crank angle, as in singleCylinderResidual.
 * @param input.reciprocatingMass of the cylinder [kg], >= 0
 * @param input.throwRadius [m], > 0
 * @param input.angularSpeed crankshaft speed [rad/s], constant
 * @param input.balanceFactor share f_b of the reciprocating mass balanced [-], 0 to 1
 * @param input.crankAngle [rad], 0 with the throw along the cylinder
 * @returns along the cylinder [N], + away from the crank; across it [N], + to the side the crankpin moves to
 * after top dead centre; resultant [N], their size together
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function singleCylinderResidualAt(input: Single & { crankAngle: number }): {
  along: number;
  across: number;
  resultant: number;
} {
  requireAll(finite, { crankAngle: input.crankAngle });
  const greatest = singleCylinderResidual(input);
  const along = greatest.along * Math.cos(input.crankAngle);
  // The counterweight lies opposite the crankpin.
  const across = -greatest.across * Math.sin(input.crankAngle);
  return { along, across, resultant: Math.hypot(along, across) };
}
