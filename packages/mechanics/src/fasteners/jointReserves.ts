import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/** A preloaded fastener and the load that pulls at its joint. */
export interface LoadedJoint {
  /** [N], >= 0 */
  readonly preload: number;
  /** Phi, share of the load that the fastener feels [-], 0 to below 1 */
  readonly loadFactor: number;
  /** load on this fastener [N], > 0 */
  readonly jointLoad: number;
}

function requireJoint({ preload, loadFactor, jointLoad }: LoadedJoint): void {
  requireAll(notNegative, { preload });
  requireAll({ atLeast: 0, below: 1 }, { loadFactor });
  requireAll(positive, { jointLoad });
}

/**
 * How many times its load a joint bears before it opens, F_v / ((1 - Phi) F_A).
 * @param joint preload [N], load factor [-] and load [N]
 * @returns reserve [-]; the joint opens at 1
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design (joint separation); VDI 2230-1.
 */
export function separationReserve(joint: LoadedJoint): number {
  requireJoint(joint);
  return joint.preload / ((1 - joint.loadFactor) * joint.jointLoad);
}

/**
 * How many times its load a joint bears before the fastener reaches a force that it may not pass, as its proof or
 * yield load: (F_max - F_v) / (Phi F_A), the joint still shut.
 * @param input.greatestForce that the fastener may carry [N], > 0
 * @param input preload [N], load factor [-], above 0, and load [N]
 * @returns reserve [-]; negative when the preload alone is beyond the force
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design (load factor of a tension joint).
 */
export function overloadReserve(input: LoadedJoint & { readonly greatestForce: number }): number {
  requireJoint(input);
  const { preload, loadFactor, jointLoad, greatestForce } = input;
  requireAll(positive, { greatestForce, loadFactor });
  return (greatestForce - preload) / (loadFactor * jointLoad);
}
