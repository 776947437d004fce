import { positive, requireAll } from "../check/requireAll.ts";
import { threadGeometry } from "./threadGeometry.ts";
import { threadStripLoad } from "./threadStripLoad.ts";

/**
 * Load that strips the thread of the bolt, sheared at the minor diameter of the tapped thread:
 * tau_S pi D1 (m_e / P)(P / 2 + (d2 - D1) tan 30 deg), every turn carrying its full share.
 * @param input.majorDiameter nominal diameter [m], > 0
 * @param input.pitch [m], > 0
 * @param input.engagement length of full thread engaged [m], > 0
 * @param input.shearStrength of the bolt [Pa], > 0; about 0.6 of its tensile strength (VDI 2230-1, from memory)
 * @returns load [N]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function boltThreadStripLoad(input: {
  majorDiameter: number;
  pitch: number;
  engagement: number;
  shearStrength: number;
}): number {
  const { pitch, engagement, shearStrength } = input;
  requireAll(positive, { engagement, shearStrength });
  const { pitchDiameter, internalMinorDiameter } = threadGeometry(input);
  const shearedPerTurn = pitch / 2 + (pitchDiameter - internalMinorDiameter) * Math.tan(Math.PI / 6);
  return shearStrength * Math.PI * internalMinorDiameter * (engagement / pitch) * shearedPerTurn;
}

/**
 * Engagement at which the tapped thread holds a given force, so that the bolt fails before the thread does.
 * @param input.majorDiameter nominal diameter [m], > 0
 * @param input.pitch [m], > 0
 * @param input.force to be held [N], > 0: tensile strength by stress area for a bolt that shall break first
 * @param input.shearStrength of the tapped metal [Pa], > 0
 * @param input.bearingShare share of the engaged length that counts, since the end turns carry little [-], above 0
 * to 1
 * @returns length of full thread [m]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function engagementNeeded(input: {
  majorDiameter: number;
  pitch: number;
  force: number;
  shearStrength: number;
  bearingShare: number;
}): number {
  const { force, bearingShare } = input;
  requireAll(positive, { force });
  requireAll({ above: 0, atMost: 1 }, { bearingShare });
  return force / (bearingShare * threadStripLoad({ ...input, engagement: 1 }));
}
