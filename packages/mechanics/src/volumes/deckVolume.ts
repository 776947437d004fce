import { finite, requireAll } from "../check/requireAll.ts";
import { boreArea } from "./boreArea.ts";

/**
 * Volume between the crown plane at top dead centre and the deck.
 * @param input.bore finished bore [m], > 0
 * @param input.deckClearance [m], + with the crown plane below the deck, - when it stands proud
 * @returns volume [m3], same sign as the deck clearance
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function deckVolume(input: { bore: number; deckClearance: number }): number {
  requireAll(finite, { deckClearance: input.deckClearance });
  return boreArea(input.bore) * input.deckClearance;
}
