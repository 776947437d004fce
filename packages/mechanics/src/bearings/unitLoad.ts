import { positive, requireAll } from "../check/requireAll.ts";
import { bearingPressure } from "../pin/bearingPressure.ts";

/**
 * Unit (specific) load of a plain bearing on its projected area, F / (D L).
 * @param input.force peak load on the bearing [N], >= 0
 * @param input.journalDiameter [m], > 0
 * @param input.shellLength effective length of the shell, without chamfers and grooves [m], > 0
 * @returns pressure [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function unitLoad(input: { force: number; journalDiameter: number; shellLength: number }): number {
  // Checked here under their own names; bearingPressure knows them only as diameter and length.
  requireAll(positive, { journalDiameter: input.journalDiameter, shellLength: input.shellLength });
  return bearingPressure({
    force: input.force,
    diameter: input.journalDiameter,
    length: input.shellLength,
  });
}
