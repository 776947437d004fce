import { positive, requireAll } from "../check/requireAll.ts";
import { pistonTravel } from "../kinematics/pistonTravel.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { boreArea } from "./boreArea.ts";

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
export function cylinderVolumeAt(input: {
  crank: SliderCrank;
  bore: number;
  clearanceVolume: number;
  angle: number;
}): number {
  const { crank, bore, clearanceVolume, angle } = input;
  requireAll(positive, { clearanceVolume });
  return clearanceVolume + boreArea(bore) * pistonTravel(crank, angle);
}
