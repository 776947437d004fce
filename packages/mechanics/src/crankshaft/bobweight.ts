import { notNegative, requireAll, requireCounts, share } from "../check/requireAll.ts";

/**
 * Bobweight for one crankpin: all that turns with it and a share of all that moves up and down on it. A share
 * of one half balances the primary force of a 90 degree V pair exactly.
 * @param input.rods rods on the crankpin, a whole number from 1
 * @param input.rotatingRodMass rotating share of one rod [kg], >= 0
 * @param input.shellMass pair of shells of one rod [kg], >= 0
 * @param input.oilMass oil in the drillings of the crankpin, once per pin [kg], >= 0
 * @param input.reciprocatingMass of one cylinder, small end included [kg], >= 0
 * @param input.balanceFactor share of the reciprocating mass balanced [-], 0 to 1
 * @returns bobweight [kg]
 * @throws RangeError when a value is out of range
 *
 * Source: definition; the half for a 90 degree V by vector sum of the primary forces.
 */
export function bobweight(input: {
  rods: number;
  rotatingRodMass: number;
  shellMass: number;
  oilMass: number;
  reciprocatingMass: number;
  balanceFactor: number;
}): number {
  const { rods, rotatingRodMass, shellMass, oilMass, reciprocatingMass, balanceFactor } = input;
  requireCounts({ rods });
  requireAll(notNegative, { rotatingRodMass, shellMass, oilMass, reciprocatingMass });
  requireAll(share, { balanceFactor });
  return rods * (rotatingRodMass + shellMass + balanceFactor * reciprocatingMass) + oilMass;
}
