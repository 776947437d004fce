import { positive, requireAll, requireCounts } from "../check/requireAll.ts";

/**
 * Side clearance of the rods on one crankpin: the length of the pin less the rods on it.
 * @param input.crankpinLength between the cheeks [m], > 0
 * @param input.rods rods on the pin, a whole number from 1
 * @param input.rodWidth big-end width of one rod [m], > 0
 * @returns clearance of all gaps together [m], - when the rods do not go in
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function sideClearance(input: { crankpinLength: number; rods: number; rodWidth: number }): number {
  const { crankpinLength, rods, rodWidth } = input;
  requireAll(positive, { crankpinLength, rodWidth });
  requireCounts({ rods });
  return crankpinLength - rods * rodWidth;
}
