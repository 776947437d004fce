import { positive, requireAll } from "../check/requireAll.ts";
import { threadGeometry } from "./threadGeometry.ts";

/**
 * Load that strips a tapped thread, sheared at the bolt's major diameter:
 * tau_B pi d (m_e / P)(P / 2 + (d - d2) tan 30 deg), every turn carrying its full share. The first and last
 * turns carry little; common practice takes a fifth off.
 * @param input.majorDiameter nominal diameter [m], > 0
 * @param input.pitch [m], > 0
 * @param input.engagement length of full thread engaged [m], > 0
 * @param input.shearStrength of the tapped material [Pa], > 0
 * @returns load [N]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function threadStripLoad(input: {
  majorDiameter: number;
  pitch: number;
  engagement: number;
  shearStrength: number;
}): number {
  const { majorDiameter, pitch, engagement, shearStrength } = input;
  requireAll(positive, { engagement, shearStrength });
  const { pitchDiameter } = threadGeometry(input);
  const shearedPerTurn = pitch / 2 + (majorDiameter - pitchDiameter) * Math.tan(Math.PI / 6);
  return shearStrength * Math.PI * majorDiameter * (engagement / pitch) * shearedPerTurn;
}

/**
 * Engaged length of thread as a multiple of the diameter.
 * @param input.engagement length of full thread engaged [m], > 0
 * @param input.majorDiameter nominal diameter [m], > 0
 * @returns ratio [-]
 * @throws RangeError when a value is not above zero
 *
 * Source: definition.
 */
export function engagementRatio(input: { engagement: number; majorDiameter: number }): number {
  const { engagement, majorDiameter } = input;
  requireAll(positive, { engagement, majorDiameter });
  return engagement / majorDiameter;
}
