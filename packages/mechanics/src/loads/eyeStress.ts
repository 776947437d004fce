import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Mean tensile stress in the two walls of a rod's eye beside its bore, sigma = F / (2 t b). The stress at the bore
 * is about two to four times as high (common practice): for comparing, not for a proof.
 * @param input.force that pulls the eye [N], > 0
 * @param input.outerDiameter of the eye [m], above the bore
 * @param input.boreDiameter bore in the eye, bush taken out [m], > 0
 * @param input.width of the eye [m], > 0
 * @returns mean stress [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function eyeStress(input: {
  force: number;
  outerDiameter: number;
  boreDiameter: number;
  width: number;
}): number {
  const { force, outerDiameter, boreDiameter, width } = input;
  requireAll(positive, { force, boreDiameter, width });
  requireAll({ above: boreDiameter }, { outerDiameter });
  return force / ((outerDiameter - boreDiameter) * width);
}
