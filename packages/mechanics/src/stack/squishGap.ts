import { finite, notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Static piston-to-head clearance over the squish band (flat face over flat crown), cold.
 * @param input.deckClearance [m], + with the crown plane below the deck
 * @param input.gasketThickness compressed thickness [m], > 0
 * @returns gap [m], - when piston and head would meet
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function squishGap(input: { deckClearance: number; gasketThickness: number }): number {
  const { deckClearance, gasketThickness } = input;
  requireAll(finite, { deckClearance });
  requireAll(positive, { gasketThickness });
  return deckClearance + gasketThickness;
}

/**
 * Piston-to-head clearance left at speed: the static gap, changed by heat, less what the running gear gives.
 * A screening sum: every part of it at its worst at the same instant.
 * @param input.squishGap static gap cold [m], either sign
 * @param input.stackGrowth thermal change of the deck clearance [m], + opens the gap
 * @param input.rodStretch elastic stretch of the reciprocating line [m], >= 0
 * @param input.pistonRock rise of the crown edge by rocking [m], >= 0
 * @param input.rodBearingClearance diametral [m], >= 0; half of it is taken up
 * @param input.mainBearingClearance diametral [m], >= 0; half of it is taken up
 * @param input.crankDeflection [m], >= 0
 * @returns gap [m], - when piston and head meet
 * @throws RangeError when a value is out of range
 *
 * Source: common practice.
 */
export function runningSquishGap(input: {
  squishGap: number;
  stackGrowth: number;
  rodStretch: number;
  pistonRock: number;
  rodBearingClearance: number;
  mainBearingClearance: number;
  crankDeflection: number;
}): number {
  const { rodStretch, pistonRock, rodBearingClearance, mainBearingClearance, crankDeflection } = input;
  requireAll(finite, { squishGap: input.squishGap, stackGrowth: input.stackGrowth });
  requireAll(notNegative, {
    rodStretch,
    pistonRock,
    rodBearingClearance,
    mainBearingClearance,
    crankDeflection,
  });
  const takenUp = (rodBearingClearance + mainBearingClearance) / 2;
  return input.squishGap + input.stackGrowth - rodStretch - pistonRock - takenUp - crankDeflection;
}
