import { finite, notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Height of the journal fillet above the journal where the edge of the shell stands,
 * r_f - sqrt(r_f^2 - (r_f - a)^2), and nothing once the edge stands clear of the fillet.
 * @param input.filletRadius of the journal [m], > 0
 * @param input.axialDistance shell edge to cheek with the rod or shell moved hard against that side [m], >= 0
 * @returns height [m], from 0 to the fillet radius
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function filletRise(input: { filletRadius: number; axialDistance: number }): number {
  const { filletRadius, axialDistance } = input;
  requireAll(positive, { filletRadius });
  requireAll(notNegative, { axialDistance });
  if (axialDistance >= filletRadius) return 0;
  return filletRadius - Math.sqrt(filletRadius ** 2 - (filletRadius - axialDistance) ** 2);
}

/**
 * Radial room between the shell's edge and the fillet: half the oil clearance and the chamfer, less the
 * fillet's rise.
 * @param input.filletRadius of the journal [m], > 0
 * @param input.axialDistance shell edge to cheek at the worst axial position [m], >= 0
 * @param input.bearingClearance diametral oil clearance [m]
 * @param input.chamferDepth radial depth of the chamfer on the shell's edge [m], >= 0
 * @returns room [m], - when the shell rides on the fillet
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function shellToFilletClearance(input: {
  filletRadius: number;
  axialDistance: number;
  bearingClearance: number;
  chamferDepth: number;
}): number {
  const { bearingClearance, chamferDepth } = input;
  requireAll(finite, { bearingClearance });
  requireAll(notNegative, { chamferDepth });
  return bearingClearance / 2 + chamferDepth - filletRise(input);
}
