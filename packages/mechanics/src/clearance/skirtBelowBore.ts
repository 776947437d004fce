import { finite, positive, requireAll } from "../check/requireAll.ts";
import { bottomDeadCentre } from "../kinematics/deadCentres.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";

/**
 * Length of skirt that hangs out of the cylinder at bottom dead centre.
 * @param input.crank the mechanism
 * @param input.skirtDepth lower edge of the skirt below the pin axis [m], > 0
 * @param input.cylinderBottomHeight bottom of the cylinder above the crank axis [m]
 * @returns length [m], + when the skirt hangs out
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function skirtBelowBore(input: {
  crank: SliderCrank;
  skirtDepth: number;
  cylinderBottomHeight: number;
}): number {
  const { crank, skirtDepth, cylinderBottomHeight } = input;
  requireAll(positive, { skirtDepth });
  requireAll(finite, { cylinderBottomHeight });
  return cylinderBottomHeight - (bottomDeadCentre(crank).height - skirtDepth);
}
