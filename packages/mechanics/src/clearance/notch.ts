import { finite, notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";
import { bottomDeadCentre } from "../kinematics/deadCentres.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";

/**
 * Height of the oil ring above the top of a rod notch at bottom dead centre. A ring that runs over the notch
 * loses its oil and its end.
 * @param input.crank the mechanism
 * @param input.compressionHeight pin axis to crown plane [m], > 0
 * @param input.ringPackDepth crown plane to the lower face of the oil groove [m], > 0
 * @param input.cylinderBottomHeight bottom of the cylinder above the crank axis [m]
 * @param input.notchHeight height of the notch above the bottom of the cylinder [m], 0 without a notch
 * @returns distance [m], - when the ring runs over the edge
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function oilRingAboveNotch(input: {
  crank: SliderCrank;
  compressionHeight: number;
  ringPackDepth: number;
  cylinderBottomHeight: number;
  notchHeight: number;
}): number {
  const { crank, compressionHeight, ringPackDepth, cylinderBottomHeight, notchHeight } = input;
  requireAll(positive, { compressionHeight, ringPackDepth });
  requireAll(finite, { cylinderBottomHeight });
  requireAll(notNegative, { notchHeight });
  const ring = bottomDeadCentre(crank).height + compressionHeight - ringPackDepth;
  return ring - (cylinderBottomHeight + notchHeight);
}

/**
 * How deep a rod notch cuts into the wall, square to the bore, at a distance from the middle of the bore. A flat
 * floor cuts deepest at its ends, where the bore curves away; a floor that follows the bore cuts as deep
 * everywhere as the flat one does at the rod's side face.
 * @param input.bore [m], > 0
 * @param input.sideFaceDistance rod's side face from the middle of the bore along the crank [m], >= 0, below half the bore
 * @param input.notchDepth straight outwards from the bore surface at the side face [m], >= 0
 * @param input.distance from the middle of the bore along the crank [m], at least sideFaceDistance
 * @returns radial depth of the cut [m]
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function notchRadialDepth(input: {
  bore: number;
  sideFaceDistance: number;
  notchDepth: number;
  distance: number;
}): number {
  const { bore, sideFaceDistance, notchDepth, distance } = input;
  requireAll(positive, { bore });
  requireAll(notNegative, { sideFaceDistance, notchDepth });
  requireThat(sideFaceDistance < bore / 2, "sideFaceDistance", sideFaceDistance, "less than half the bore");
  requireThat(distance >= sideFaceDistance, "distance", distance, "at least sideFaceDistance");
  const floor = Math.sqrt((bore / 2) ** 2 - sideFaceDistance ** 2) + notchDepth;
  // A notch of no depth ends on the bore; rounding may put it a hair inside.
  return Math.max(0, Math.hypot(floor, distance) - bore / 2);
}

/**
 * Wall left behind a notch.
 * @param input.wallThickness measured at the notch [m], > 0; for a liner the liner's wall alone
 * @param input.notchDepth square to the bore at the place of least wall [m], >= 0: notchRadialDepth
 * @returns wall [m], - when the notch breaks through
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function notchWall(input: { wallThickness: number; notchDepth: number }): number {
  const { wallThickness, notchDepth } = input;
  requireAll(positive, { wallThickness });
  requireAll(notNegative, { notchDepth });
  return wallThickness - notchDepth;
}

/**
 * Width of a notch that clears the rod on both sides.
 * @param input.rodWidth big-end width [m], > 0
 * @param input.sideGap wanted on each side [m], >= 0; 1.0-1.5 mm (common practice)
 * @param input.axialFloat rod side clearance and crank end play [m], >= 0
 * @param input.cornerRadius of the notch's side edges [m], >= 0
 * @returns width [m]
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function notchWidthNeeded(input: {
  rodWidth: number;
  sideGap: number;
  axialFloat: number;
  cornerRadius: number;
}): number {
  const { rodWidth, sideGap, axialFloat, cornerRadius } = input;
  requireAll(positive, { rodWidth });
  requireAll(notNegative, { sideGap, axialFloat, cornerRadius });
  return rodWidth + 2 * (sideGap + axialFloat + cornerRadius);
}
