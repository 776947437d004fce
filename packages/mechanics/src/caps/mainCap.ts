import { notNegative, positive, requireAll, requireCounts } from "../check/requireAll.ts";

/** A main bearing cap under the firing load of its cylinder. */
export interface MainCapLoad {
  /** bolts of the cap, a whole number from 1 */
  readonly bolts: number;
  /** preload of one bolt, the least of its scatter [N], >= 0 */
  readonly preload: number;
  /** this cap's share of the firing load [N], > 0 */
  readonly firingLoad: number;
  /**
   * from the firing line to the normal of the cap's joint [rad], 0 to a quarter turn; half the bank angle in a V, a
   * quarter turn for opposed cylinders, whose firing lies along the joint
   */
  readonly firingLineAngle: number;
}

function components(cap: MainCapLoad): { clamp: number; down: number; sideways: number } {
  const { bolts, preload, firingLoad, firingLineAngle } = cap;
  requireCounts({ bolts });
  requireAll(notNegative, { preload });
  requireAll(positive, { firingLoad });
  requireAll({ atLeast: 0, atMost: Math.PI / 2 }, { firingLineAngle });
  return {
    clamp: bolts * preload,
    down: firingLoad * Math.cos(firingLineAngle),
    sideways: firingLoad * Math.sin(firingLineAngle),
  };
}

/**
 * Clamp of a main cap over the part of the firing load that pulls it off.
 * @param cap bolts, preload [N], load [N] and its angle [rad], below a quarter turn: along the joint nothing pulls
 * @returns ratio [-]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function capClampRatio(cap: MainCapLoad): number {
  requireAll({ below: Math.PI / 2 }, { firingLineAngle: cap.firingLineAngle });
  const { clamp, down } = components(cap);
  return clamp / down;
}

/**
 * Friction that holds a main cap sideways over the part of the firing load that pushes it. Register, dowels
 * and cross bolts are extra.
 * @param input.friction between cap and block [-], >= 0
 * @param input bolts, preload [N], load [N] and its angle [rad] as in {@link MainCapLoad}
 * @returns ratio [-]; - when the load lifts the cap, Infinity when nothing pushes sideways
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function capSlipRatio(input: MainCapLoad & { readonly friction: number }): number {
  requireAll(notNegative, { friction: input.friction });
  const { clamp, down, sideways } = components(input);
  return sideways === 0 ? Number.POSITIVE_INFINITY : (input.friction * (clamp - down)) / sideways;
}
