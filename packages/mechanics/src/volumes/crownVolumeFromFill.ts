import { notNegative, positive, requireAll } from "../check/requireAll.ts";
import { boreArea } from "./boreArea.ts";

/**
 * Net crown volume from a fill test: the piston is lowered a measured depth below the deck, a plate closes
 * the bore and the space is filled from a burette.
 * @param input.fillVolume liquid filled in [m3], > 0
 * @param input.bore finished bore [m], > 0
 * @param input.depthBelowDeck depth of the crown plane below the deck during the test [m], >= 0
 * @param input.topLandVolume crevice filled above the top ring [m3], 0 when sealed with grease
 * @returns crown volume [m3]: + dish, - dome
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function crownVolumeFromFill(input: {
  fillVolume: number;
  bore: number;
  depthBelowDeck: number;
  topLandVolume: number;
}): number {
  const { fillVolume, bore, depthBelowDeck, topLandVolume } = input;
  requireAll(positive, { fillVolume });
  requireAll(notNegative, { depthBelowDeck, topLandVolume });
  return fillVolume - boreArea(bore) * depthBelowDeck - topLandVolume;
}
