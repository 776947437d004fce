import { finite, positive, requireAll } from "../check/requireAll.ts";
import { topDeadCentre } from "../kinematics/deadCentres.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";

/**
 * Deck clearance: how far the crown plane stands below the deck at top dead centre.
 * @param input.crank the mechanism; with an offset its top dead centre is lower than r + l
 * @param input.deckHeight crank axis to deck face [m], > 0
 * @param input.compressionHeight pin axis to crown plane [m], > 0
 * @returns deck clearance [m], + below the deck, - proud of it
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function deckClearance(input: {
  crank: SliderCrank;
  deckHeight: number;
  compressionHeight: number;
}): number {
  const { crank, deckHeight, compressionHeight } = input;
  requireAll(positive, { deckHeight, compressionHeight });
  return deckHeight - (topDeadCentre(crank).height + compressionHeight);
}

/**
 * Compression height that gives a wanted deck clearance.
 * @param input.crank the mechanism
 * @param input.deckHeight crank axis to deck face [m], > 0
 * @param input.deckClearance wanted deck clearance [m], + below the deck
 * @returns compression height [m]; not above zero means that throw and rod alone fill the block
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function compressionHeightNeeded(input: {
  crank: SliderCrank;
  deckHeight: number;
  deckClearance: number;
}): number {
  requireAll(positive, { deckHeight: input.deckHeight });
  requireAll(finite, { deckClearance: input.deckClearance });
  return input.deckHeight - topDeadCentre(input.crank).height - input.deckClearance;
}
