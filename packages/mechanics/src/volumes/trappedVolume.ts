import { requireAll } from "../check/requireAll.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { cylinderVolumeAt } from "./cylinderVolumeAt.ts";

/**
 * Cylinder volume when the inlet valve has closed.
 * @param input.crank the mechanism
 * @param input.bore finished bore [m], > 0
 * @param input.clearanceVolume volume at top dead centre [m3], > 0
 * @param input.inletClosing crank angle after nominal bottom dead centre (throw straight down) [rad], 0 up to
 * pi; taken at 0.15-0.25 mm valve lift (common practice), not at the lift cam cards quote durations at
 * @returns volume [m3]
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function trappedVolume(input: {
  crank: SliderCrank;
  bore: number;
  clearanceVolume: number;
  inletClosing: number;
}): number {
  const { inletClosing } = input;
  requireAll({ atLeast: 0, below: Math.PI }, { inletClosing });
  return cylinderVolumeAt({ ...input, angle: inletClosing - Math.PI });
}

/**
 * Trapped ("dynamic") compression ratio: volume at inlet closing over clearance volume.
 * @param input.crank the mechanism
 * @param input.bore finished bore [m], > 0
 * @param input.clearanceVolume volume at top dead centre [m3], > 0
 * @param input.inletClosing crank angle after nominal bottom dead centre [rad], 0 up to pi
 * @returns trapped ratio [-]
 * @throws RangeError when a value is out of range
 *
 * Source: common practice; plane geometry.
 */
export function trappedCompressionRatio(input: {
  crank: SliderCrank;
  bore: number;
  clearanceVolume: number;
  inletClosing: number;
}): number {
  return trappedVolume(input) / input.clearanceVolume;
}
