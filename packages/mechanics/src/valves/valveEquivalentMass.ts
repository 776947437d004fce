import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Mass of the whole valve train as the valve feels it: valve, retainer and locks whole, a third of the spring,
 * the rocker's mass reduced to the valve, and follower and pushrod over the square of the rocker ratio, since
 * they move that much slower.
 * @param input.valve [kg], > 0
 * @param input.retainer with the locks [kg], >= 0
 * @param input.spring [kg], >= 0
 * @param input.rockerAtValve rocker inertia over the square of its valve-side arm [kg], >= 0; 0 without a rocker
 * @param input.follower [kg], >= 0
 * @param input.pushrod [kg], >= 0; 0 without one
 * @param input.rockerRatio valve lift over follower lift [-], > 0; 1 for direct action
 * @returns mass [kg]
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function valveEquivalentMass(input: {
  valve: number;
  retainer: number;
  spring: number;
  rockerAtValve: number;
  follower: number;
  pushrod: number;
  rockerRatio: number;
}): number {
  const { valve, retainer, spring, rockerAtValve, follower, pushrod, rockerRatio } = input;
  requireAll(positive, { valve, rockerRatio });
  requireAll(notNegative, { retainer, spring, rockerAtValve, follower, pushrod });
  return valve + retainer + spring / 3 + rockerAtValve + (follower + pushrod) / rockerRatio ** 2;
}
