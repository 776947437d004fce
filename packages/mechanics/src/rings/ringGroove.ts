import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Side (axial) clearance of a ring in its groove.
 * @param input.grooveHeight [m], > 0
 * @param input.ringHeight axial height of the ring [m], > 0
 * @returns clearance [m], - when the ring does not enter the groove
 * @throws RangeError when a value is not above zero
 *
 * Source: definition.
 */
export function ringSideClearance(input: { grooveHeight: number; ringHeight: number }): number {
  const { grooveHeight, ringHeight } = input;
  requireAll(positive, { grooveHeight, ringHeight });
  return grooveHeight - ringHeight;
}

/**
 * Back (radial) clearance behind a ring flush with the bore, on the side the piston has moved to.
 * @param input.bore finished bore [m], > 0
 * @param input.grooveRootDiameter [m], > 0
 * @param input.ringRadialWall radial thickness of the ring [m], > 0
 * @param input.pistonShift sideways shift of the piston, half its diametral clearance [m], >= 0
 * @returns clearance [m], - when the ring stands out of the groove and wedges the piston
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function ringBackClearance(input: {
  bore: number;
  grooveRootDiameter: number;
  ringRadialWall: number;
  pistonShift: number;
}): number {
  const { bore, grooveRootDiameter, ringRadialWall, pistonShift } = input;
  requireAll(positive, { bore, grooveRootDiameter, ringRadialWall });
  requireAll(notNegative, { pistonShift });
  return (bore - grooveRootDiameter) / 2 - ringRadialWall - pistonShift;
}

/**
 * Height of a land as a share of the bore.
 * @param input.landHeight [m], > 0
 * @param input.bore finished bore [m], > 0
 * @returns ratio [-]
 * @throws RangeError when a value is not above zero
 *
 * Source: definition.
 */
export function landRatio(input: { landHeight: number; bore: number }): number {
  const { landHeight, bore } = input;
  requireAll(positive, { landHeight, bore });
  return landHeight / bore;
}
