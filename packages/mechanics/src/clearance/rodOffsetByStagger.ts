import { finite, notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * How far the small ends of two rods that share a crankpin stand off their cylinders' axes at most, when the cylinders
 * are staggered by more or less than the rods are: each rod takes half of the mismatch.
 * The two rods can stand from a rod's width to the pin's length less a rod's width apart.
 * @param pair.bankStagger distance of the two cylinders' axes along the crankshaft [m], >= 0
 * @param pair.crankpinLength between the cheeks [m], at least two rods' width
 * @param pair.rodWidth [m], > 0
 * @param pair.beamOffset middle of the small end from that of the big end [m], + away from the other rod
 * @returns offset [m], >= 0
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function rodOffsetByStagger(pair: {
  bankStagger: number;
  crankpinLength: number;
  rodWidth: number;
  beamOffset: number;
}): number {
  const { bankStagger, crankpinLength, rodWidth, beamOffset } = pair;
  requireAll(notNegative, { bankStagger });
  requireAll(finite, { beamOffset });
  requireAll(positive, { rodWidth });
  requireAll({ atLeast: 2 * rodWidth }, { crankpinLength });
  const off = (apart: number) => Math.abs((bankStagger - apart) / 2 - beamOffset);
  return Math.max(off(rodWidth), off(crankpinLength - rodWidth));
}
