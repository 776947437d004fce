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
 * Radial room between the shell and the fillet, half the oil clearance plus what the chamfer leaves less the rise of
 * the fillet, at both ends of the chamfer: the rise falls ever more slowly and the chamfer evenly, so the least is at
 * one of them. At the edge alone, a wide chamfer's inner end is overlooked.
 * @param input.filletRadius of the journal [m], > 0
 * @param input.axialDistance shell edge to cheek at the worst axial position [m], >= 0
 * @param input.bearingClearance diametral oil clearance [m]
 * @param input.chamferDepth of the chamfer on the shell's edge, square to the journal [m], >= 0
 * @param input.chamferWidth of the chamfer along the journal [m], >= 0
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
  chamferWidth: number;
}): number {
  const { filletRadius, axialDistance, bearingClearance, chamferDepth, chamferWidth } = input;
  requireAll(finite, { bearingClearance });
  requireAll(notNegative, { chamferDepth, chamferWidth });
  const inner = filletRise({ filletRadius, axialDistance: axialDistance + chamferWidth });
  return bearingClearance / 2 + Math.min(chamferDepth - filletRise(input), -inner);
}
