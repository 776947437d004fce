import { finite, notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Radial room between a counterweight and the nozzle of an oil squirter, the crankshaft lying in its bearings on
 * that side.
 * @param input.across centre of the nozzle from the crank axis, across the engine [m], either sign
 * @param input.height centre of the nozzle above the crank axis [m], - below it
 * @param input.nozzleRadius of the nozzle, taken as round [m], > 0
 * @param input.counterweightRadius [m], > 0
 * @param input.mainBearingClearance diametral [m], >= 0; half of it is taken up
 * @returns clearance [m], - when they meet
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function counterweightToSquirter(input: {
  across: number;
  height: number;
  nozzleRadius: number;
  counterweightRadius: number;
  mainBearingClearance: number;
}): number {
  const { across, height, nozzleRadius, counterweightRadius, mainBearingClearance } = input;
  requireAll(finite, { across, height });
  requireAll(positive, { nozzleRadius, counterweightRadius });
  requireAll(notNegative, { mainBearingClearance });
  return Math.hypot(across, height) - nozzleRadius - counterweightRadius - mainBearingClearance / 2;
}
