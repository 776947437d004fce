import { positive, requireAll } from "../check/requireAll.ts";
import { type ThermalPart, thermalGrowth } from "../stack/ThermalPart.ts";

/**
 * Diametral oil clearance cold: housing bore with its fasteners tightened, less two walls, less the journal.
 * @param input.housingBore across the crown of the shells [m], > 0
 * @param input.shellWall wall at the crown [m], > 0
 * @param input.journalDiameter [m], > 0
 * @returns diametral clearance [m], - when the journal does not turn
 * @throws RangeError when a value is not above zero
 *
 * Source: definition.
 */
export function bearingClearance(input: {
  housingBore: number;
  shellWall: number;
  journalDiameter: number;
}): number {
  const { housingBore, shellWall, journalDiameter } = input;
  requireAll(positive, { housingBore, shellWall, journalDiameter });
  return housingBore - 2 * shellWall - journalDiameter;
}

/**
 * Diametral oil clearance hot, each part at one uniform temperature.
 * @param input.housing housing bore; for a cap of another metal the mean expansion of both (from memory)
 * @param input.shellWall wall of one shell at the crown
 * @param input.journal journal diameter
 * @returns diametral clearance [m], - when the journal does not turn
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function hotBearingClearance(input: {
  housing: ThermalPart;
  shellWall: ThermalPart;
  journal: ThermalPart;
}): number {
  const { housing, shellWall, journal } = input;
  const growth = thermalGrowth(housing) - 2 * thermalGrowth(shellWall) - thermalGrowth(journal);
  const cold = bearingClearance({
    housingBore: housing.size,
    shellWall: shellWall.size,
    journalDiameter: journal.size,
  });
  return cold + growth;
}
