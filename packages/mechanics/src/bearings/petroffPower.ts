import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Friction power of a lightly loaded bearing (Petroff), 2 pi mu omega^2 R^3 L / c. A heavy load raises it.
 * @param input.viscosity dynamic viscosity of the oil in the film [Pa s], > 0
 * @param input.angularSpeed of the journal [rad/s], > 0
 * @param input.journalRadius [m], > 0
 * @param input.length effective length of the shell [m], > 0
 * @param input.radialClearance half the diametral clearance [m], > 0
 * @returns power [W]
 * @throws RangeError when a value is not above zero
 *
 * Source: Shigley's Mechanical Engineering Design.
 */
export function petroffPower(input: {
  viscosity: number;
  angularSpeed: number;
  journalRadius: number;
  length: number;
  radialClearance: number;
}): number {
  const { viscosity, angularSpeed, journalRadius, length, radialClearance } = input;
  requireAll(positive, { viscosity, angularSpeed, journalRadius, length, radialClearance });
  return (2 * Math.PI * viscosity * angularSpeed ** 2 * journalRadius ** 3 * length) / radialClearance;
}
