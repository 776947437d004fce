import { finite, notNegative, requireAll } from "../check/requireAll.ts";

/** Tilts a valve can have against the cylinder: less than a quarter turn either way. */
export const tiltRange = { above: -Math.PI / 2, below: Math.PI / 2 };

/**
 * Distance along the valve's axis from the shut valve to the floor of its pocket with the piston at top dead
 * centre: c_0 = (h_d + t_g + recess) cos(alpha) + p. A measured value outranks it.
 * @param input.deckClearance crown to deck [m], + below the deck
 * @param input.gasketThickness compressed [m], >= 0
 * @param input.valveRecess valve face's edge above the head face, along the cylinder [m], - when it hangs below
 * @param input.valveTilt valve axis against the cylinder axis alpha [rad], within a quarter turn
 * @param input.pocketDepth square to the pocket's floor [m], >= 0; 0 without a pocket
 * @returns c_0 [m], - when the shut valve is already hit
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function shutValveDistance(input: {
  deckClearance: number;
  gasketThickness: number;
  valveRecess: number;
  valveTilt: number;
  pocketDepth: number;
}): number {
  const { deckClearance, gasketThickness, valveRecess, valveTilt, pocketDepth } = input;
  requireAll(finite, { deckClearance, valveRecess });
  requireAll(notNegative, { gasketThickness, pocketDepth });
  requireAll(tiltRange, { valveTilt });
  return (deckClearance + gasketThickness + valveRecess) * Math.cos(valveTilt) + pocketDepth;
}

/**
 * Room left when a valve stands fully open with the piston at top dead centre, as after a failed camshaft
 * drive: c_0 - L_max.
 * @param input.shutValveDistance c_0 [m], either sign
 * @param input.greatestLift at the valve [m], >= 0
 * @returns room [m], - when a failed drive bends valves
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function openValveToPiston(input: { shutValveDistance: number; greatestLift: number }): number {
  requireAll(finite, { shutValveDistance: input.shutValveDistance });
  requireAll(notNegative, { greatestLift: input.greatestLift });
  return input.shutValveDistance - input.greatestLift;
}
