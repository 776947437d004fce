import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Reciprocating mass of one cylinder.
 * @param input.piston [kg], > 0
 * @param input.pin [kg], >= 0
 * @param input.rings the whole set [kg], >= 0
 * @param input.retainers both [kg], >= 0
 * @param input.rodSmallEnd reciprocating share of the rod [kg], >= 0
 * @returns mass [kg]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function reciprocatingMass(input: {
  piston: number;
  pin: number;
  rings: number;
  retainers: number;
  rodSmallEnd: number;
}): number {
  const { piston, pin, rings, retainers, rodSmallEnd } = input;
  requireAll(positive, { piston });
  requireAll(notNegative, { pin, rings, retainers, rodSmallEnd });
  return piston + pin + rings + retainers + rodSmallEnd;
}
