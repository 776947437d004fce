import { finite, notNegative, positive, requireAll } from "../check/requireAll.ts";
import { pistonTravelOver } from "../kinematics/pistonTravel.ts";
import { leastOverOverlap, pistonToValveAxialOver, type ValveOverPiston } from "./pistonToValveAxial.ts";
import { tiltRange } from "./shutValveDistance.ts";

/** A valve head and the pocket it dips into. */
export interface ValvePocket {
  /** radius of the pocket's wall [m] */
  readonly pocketRadius: number;
  /** radius of the valve head [m] */
  readonly valveRadius: number;
  /**
   * pocket axis from valve axis at top dead centre, across the valve in the plane of its tilt [m]; with a
   * tilt above 0 the falling piston carries the pocket towards -
   */
  readonly pocketOffset: number;
  /** valve axis against the cylinder axis [rad], within a quarter turn */
  readonly valveTilt: number;
}

/**
 * Radial room between the edge of the valve and the wall of its pocket with the piston a given distance below
 * top dead centre: R_pocket - R_valve - |e_p - s sin(alpha)|. The lift does not move the valve across.
 * @param input.pocketRadius R_pocket [m], > 0
 * @param input.valveRadius R_valve [m], > 0
 * @param input.pocketOffset e_p [m], either sign
 * @param input.valveTilt alpha [rad], within a quarter turn
 * @param input.travel piston below top dead centre s [m], >= 0
 * @returns room [m], - when the edge catches the wall
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function valvePocketRoom(input: ValvePocket & { readonly travel: number }): number {
  requireAll(notNegative, { travel: input.travel });
  return valvePocketRoomOver(input)(input.travel);
}

/** The same over the travel, checked once: for sweeps. */
function valvePocketRoomOver({
  pocketRadius,
  valveRadius,
  pocketOffset,
  valveTilt,
}: ValvePocket): (travel: number) => number {
  requireAll(positive, { pocketRadius, valveRadius });
  requireAll(finite, { pocketOffset });
  requireAll(tiltRange, { valveTilt });
  const sine = Math.sin(valveTilt);
  return (travel) => pocketRadius - valveRadius - Math.abs(pocketOffset - travel * sine);
}

/**
 * Least radial room between valve and pocket over the crank angles, within 60 degrees of overlap top dead
 * centre, at which the valve's edge lies below the crown.
 * @param input the valve over the piston and its pocket
 * @param input.pocketDepth square to the pocket's floor [m], > 0
 * @returns room [m], - when the edge catches the wall, and the crank angle [rad] from overlap top dead centre;
 * undefined when the valve stays above the crown
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function pistonToValveRadial(
  input: ValveOverPiston & ValvePocket & { readonly pocketDepth: number },
): { clearance: number; angle: number } | undefined {
  requireAll(positive, { pocketDepth: input.pocketDepth });
  const axial = pistonToValveAxialOver(input);
  const travel = pistonTravelOver(input.crank);
  const roomAt = valvePocketRoomOver(input);
  const least = leastOverOverlap((angle) =>
    axial(angle) < input.pocketDepth ? roomAt(travel(angle)) : Number.POSITIVE_INFINITY,
  );
  return Number.isFinite(least.value) ? { clearance: least.value, angle: least.at } : undefined;
}
