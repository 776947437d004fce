import { finite, positive, requireAll } from "../check/requireAll.ts";
import { pistonTravelOver } from "../kinematics/pistonTravel.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { boreArea } from "./boreArea.ts";

/** One cylinder with its mechanism. */
export interface Cylinder {
  readonly crank: SliderCrank;
  /** finished bore [m], > 0 */
  readonly bore: number;
  /** volume at top dead centre [m3], > 0 */
  readonly clearanceVolume: number;
}

/**
 * The cylinder volume as a function of the crank angle, V_c + A s(theta), checked once: for sweeps.
 * @param cylinder the mechanism, its bore and its clearance volume
 * @returns crank angle [rad] → volume [m3]
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry; Heywood, Internal Combustion Engine Fundamentals.
 */
export function cylinderVolume(cylinder: Cylinder): (angle: number) => number {
  const { crank, clearanceVolume } = cylinder;
  requireAll(positive, { clearanceVolume });
  const area = boreArea(cylinder.bore);
  const travel = pistonTravelOver(crank);
  return (angle) => clearanceVolume + area * travel(angle);
}

/**
 * Cylinder volume at a crank angle, V_c + A s(theta).
 * @param input.crank the mechanism
 * @param input.bore finished bore [m], > 0
 * @param input.clearanceVolume volume at top dead centre [m3], > 0
 * @param input.angle crank angle [rad]
 * @returns volume [m3]
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry; Heywood, Internal Combustion Engine Fundamentals.
 */
export function cylinderVolumeAt(input: Cylinder & { readonly angle: number }): number {
  requireAll(finite, { angle: input.angle });
  return cylinderVolume(input)(input.angle);
}
