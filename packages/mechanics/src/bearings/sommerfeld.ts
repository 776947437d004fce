import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Sommerfeld number, (mu N / P)(R / c)^2 with N in revolutions per second.
 * @param input.viscosity dynamic viscosity of the oil in the film [Pa s], > 0
 * @param input.angularSpeed of the journal [rad/s], > 0
 * @param input.unitLoad load on the projected area [Pa], > 0
 * @param input.journalRadius [m], > 0
 * @param input.radialClearance half the diametral clearance [m], > 0
 * @returns Sommerfeld number [-]
 * @throws RangeError when a value is not above zero
 *
 * Source: Shigley's Mechanical Engineering Design.
 */
export function sommerfeld(input: {
  viscosity: number;
  angularSpeed: number;
  unitLoad: number;
  journalRadius: number;
  radialClearance: number;
}): number {
  const { viscosity, angularSpeed, unitLoad, journalRadius, radialClearance } = input;
  requireAll(positive, { viscosity, angularSpeed, unitLoad, journalRadius, radialClearance });
  const revolutions = angularSpeed / (2 * Math.PI);
  return ((viscosity * revolutions) / unitLoad) * (journalRadius / radialClearance) ** 2;
}
