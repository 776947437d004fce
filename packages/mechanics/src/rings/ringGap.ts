import { finite, notNegative, positive, requireAll } from "../check/requireAll.ts";

/** How bore and ring warm up. */
export interface RingWarming {
  /** finished bore [m], > 0 */
  readonly bore: number;
  /** coefficient of linear expansion of the ring [1/K] */
  readonly ringExpansion: number;
  /** temperature of the ring above cold [K] */
  readonly ringTemperatureRise: number;
  /** coefficient of linear expansion of the cylinder [1/K] */
  readonly boreExpansion: number;
  /** temperature of the cylinder wall above cold [K] */
  readonly boreTemperatureRise: number;
}

/**
 * Closing of a ring's end gap from cold to hot, pi B (a_ring dT_ring - a_bore dT_bore), for a ring that stays
 * in contact with the bore all round.
 * @param warming bore [m], expansions [1/K] and temperature rises [K] of ring and cylinder
 * @returns closing [m], + when the gap shrinks
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function ringGapClosing(warming: RingWarming): number {
  const { bore, ringExpansion, ringTemperatureRise, boreExpansion, boreTemperatureRise } = warming;
  requireAll(positive, { bore });
  requireAll(finite, { ringExpansion, ringTemperatureRise, boreExpansion, boreTemperatureRise });
  return Math.PI * bore * (ringExpansion * ringTemperatureRise - boreExpansion * boreTemperatureRise);
}

/**
 * End gap left when hot. Ring ends that touch scuff the bore and can pull the piston apart.
 * @param input.coldGap end gap in the finished bore, cold [m], >= 0
 * @param input the warming as in {@link RingWarming}
 * @returns gap hot [m], - when the ends would overlap
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function hotRingGap(input: RingWarming & { readonly coldGap: number }): number {
  requireAll(notNegative, { coldGap: input.coldGap });
  return input.coldGap - ringGapClosing(input);
}

/**
 * End gap by a factor of the bore. The ring maker's figure outranks it.
 * @param input.bore finished bore [m], > 0
 * @param input.factor gap over bore [-], > 0
 * @returns cold gap [m]
 * @throws RangeError when a value is not above zero
 *
 * Source: common practice.
 */
export function ringGapForFactor(input: { bore: number; factor: number }): number {
  const { bore, factor } = input;
  requireAll(positive, { bore, factor });
  return factor * bore;
}
