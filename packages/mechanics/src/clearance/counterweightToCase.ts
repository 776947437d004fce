import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Radial room between counterweight and crankcase, the crankshaft lying in its bearings on that side.
 * @param input.caseRadius inside of the case about the crank axis [m], > 0
 * @param input.counterweightRadius [m], > 0
 * @param input.mainBearingClearance diametral [m], >= 0; half of it is taken up
 * @returns clearance [m], - when they meet
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function counterweightToCase(input: {
  caseRadius: number;
  counterweightRadius: number;
  mainBearingClearance: number;
}): number {
  const { caseRadius, counterweightRadius, mainBearingClearance } = input;
  requireAll(positive, { caseRadius, counterweightRadius });
  requireAll(notNegative, { mainBearingClearance });
  return caseRadius - counterweightRadius - mainBearingClearance / 2;
}
