import { finite, notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Room between the rod's small end and the underside of the crown.
 * @param input.crownUndersideHeight underside of the crown above the pin axis [m], > 0
 * @param input.smallEndRadius outside radius of the small end [m], > 0
 * @returns clearance [m], - when they meet
 * @throws RangeError when a value is not above zero
 *
 * Source: definition.
 */
export function smallEndToCrown(input: { crownUndersideHeight: number; smallEndRadius: number }): number {
  const { crownUndersideHeight, smallEndRadius } = input;
  requireAll(positive, { crownUndersideHeight, smallEndRadius });
  return crownUndersideHeight - smallEndRadius;
}

/**
 * Room between the small end and the nearer pin boss.
 * @param input.bossDistance between the inner faces of the bosses [m], > 0
 * @param input.smallEndWidth [m], > 0
 * @param input.planeOffset of the rod's middle plane from the cylinder axis along the crank [m], either sign
 * @param input.axialFloat how far rod and crankshaft can move that way [m], >= 0
 * @returns clearance [m], - when they meet
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function smallEndSideRoom(input: {
  bossDistance: number;
  smallEndWidth: number;
  planeOffset: number;
  axialFloat: number;
}): number {
  const { bossDistance, smallEndWidth, planeOffset, axialFloat } = input;
  requireAll(positive, { bossDistance, smallEndWidth });
  requireAll(finite, { planeOffset });
  requireAll(notNegative, { axialFloat });
  return (bossDistance - smallEndWidth) / 2 - Math.abs(planeOffset) - axialFloat;
}
