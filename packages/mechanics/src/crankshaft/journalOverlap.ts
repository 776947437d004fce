import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Overlap of main journal and crankpin seen along the crankshaft, (D_m + D_p) / 2 - r. It is what carries the
 * load through the web.
 * @param input.mainDiameter [m], > 0
 * @param input.crankpinDiameter [m], > 0
 * @param input.throwRadius [m], > 0
 * @returns overlap [m], - when the journals do not overlap
 * @throws RangeError when a value is not above zero
 *
 * Source: definition.
 */
export function journalOverlap(input: {
  mainDiameter: number;
  crankpinDiameter: number;
  throwRadius: number;
}): number {
  const { mainDiameter, crankpinDiameter, throwRadius } = input;
  requireAll(positive, { mainDiameter, crankpinDiameter, throwRadius });
  return (mainDiameter + crankpinDiameter) / 2 - throwRadius;
}
