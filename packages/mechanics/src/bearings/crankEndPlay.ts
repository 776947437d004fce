import { finite, positive, requireAll } from "../check/requireAll.ts";
import { type ThermalPart, thermalGrowth } from "../stack/ThermalPart.ts";

/**
 * Crankshaft end play from sizes: length of the thrust journal, less the bearing web and the two thrust washers.
 * @param input.journalLength of the thrust journal between its faces [m], > 0
 * @param input.webWidth of the block's bearing web or the cap, whichever carries the washers [m], > 0
 * @param input.washerThickness of one washer or flange [m], > 0
 * @returns end play [m], - when the crankshaft does not go in
 * @throws RangeError when a value is not above zero
 *
 * Source: definition.
 */
export function crankEndPlay(input: {
  journalLength: number;
  webWidth: number;
  washerThickness: number;
}): number {
  const { journalLength, webWidth, washerThickness } = input;
  requireAll(positive, { journalLength, webWidth, washerThickness });
  return journalLength - webWidth - 2 * washerThickness;
}

/**
 * Crankshaft end play hot: the cold one and what the journal outgrows web and washers by.
 * @param input.endPlay cold, measured or from {@link crankEndPlay} [m]
 * @param input.journal length of the thrust journal
 * @param input.web width of the bearing web
 * @param input.washer thickness of one washer
 * @returns end play [m], - when the crankshaft binds
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function hotCrankEndPlay(input: {
  endPlay: number;
  journal: ThermalPart;
  web: ThermalPart;
  washer: ThermalPart;
}): number {
  const { endPlay, journal, web, washer } = input;
  requireAll(finite, { endPlay });
  return endPlay + thermalGrowth(journal) - thermalGrowth(web) - 2 * thermalGrowth(washer);
}

/**
 * Shift along the crankshaft between block and crankshaft when hot, at a distance from the thrust bearing.
 * @param input.block the distance as a length of the block
 * @param input.crankshaft the same distance as a length of the crankshaft
 * @returns shift [m], + when the block outgrows the crankshaft
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function axialShift(input: { block: ThermalPart; crankshaft: ThermalPart }): number {
  return thermalGrowth(input.block) - thermalGrowth(input.crankshaft);
}
