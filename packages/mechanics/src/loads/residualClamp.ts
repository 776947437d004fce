import { notNegative, positive, requireAll, share } from "../check/requireAll.ts";
import { jointLoadPerBolt } from "./bigEndJointLoad.ts";

/**
 * Reserve of a bolted joint: all the preload over the force that opens it. Uses no load factor, so it can be
 * read straight against the limits builders quote.
 * @param input.preload of one bolt [N], > 0
 * @param input.bolts number of bolts in the joint, a whole number from 1
 * @param input.jointLoad force that opens the joint [N], > 0
 * @returns reserve [-]
 * @throws RangeError when a value is out of range
 *
 * Source: Kolchin & Demidov, Design of Automotive Engines (from memory); VDI 2230-1.
 */
export function jointReserve(input: { preload: number; bolts: number; jointLoad: number }): number {
  const { preload, jointLoad } = input;
  requireAll(positive, { preload, jointLoad });
  return preload / jointLoadPerBolt({ ...input, pryingFactor: 1 });
}

/**
 * Clamp force left in a joint under load, z F_v - (1 - Phi) F_j x prying. At or below zero the joint opens
 * and the bolts take the whole alternating load.
 * @param input.preload of one bolt after settling [N], >= 0
 * @param input.bolts number of bolts in the joint, a whole number from 1
 * @param input.loadFactor Phi, share of the load that the bolts feel [-], 0 to 1
 * @param input.jointLoad force that opens the joint [N], >= 0
 * @param input.pryingFactor rise by bending of the cap [-], >= 1
 * @returns clamp force of the whole joint [N], <= 0 when it opens
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function residualClamp(input: {
  preload: number;
  bolts: number;
  loadFactor: number;
  jointLoad: number;
  pryingFactor: number;
}): number {
  const { preload, bolts, loadFactor } = input;
  requireAll(notNegative, { preload });
  requireAll(share, { loadFactor });
  return bolts * (preload - (1 - loadFactor) * jointLoadPerBolt(input));
}
