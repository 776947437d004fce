import { notNegative, positive, requireAll, requireCounts } from "../check/requireAll.ts";

/**
 * Shear load that solid or ring dowels carry, n pi/4 (D^2 - d^2) tau. Counted as a reserve only: friction holds the
 * joint, and a dowel takes load once it has slipped.
 * @param input.dowels how many, a whole number from 1
 * @param input.outerDiameter D [m], > 0
 * @param input.innerDiameter d [m], >= 0 and below D; 0 for a solid dowel
 * @param input.shearStrength allowable shear stress [Pa], > 0
 * @returns load [N]
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design (direct shear).
 */
export function dowelShear(input: {
  dowels: number;
  outerDiameter: number;
  innerDiameter: number;
  shearStrength: number;
}): number {
  const { dowels, outerDiameter, innerDiameter, shearStrength } = input;
  requireCounts({ dowels });
  requireAll(positive, { outerDiameter, shearStrength });
  requireAll(notNegative, { innerDiameter });
  requireAll({ below: outerDiameter }, { innerDiameter });
  return dowels * (Math.PI / 4) * (outerDiameter ** 2 - innerDiameter ** 2) * shearStrength;
}
