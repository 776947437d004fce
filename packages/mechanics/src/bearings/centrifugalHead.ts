import { finite, notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Pressure that oil needs to flow inwards through a turning drilling, from the journal's surface to where the
 * drilling comes nearest to the axis: rho omega^2 (R^2 - r_0^2)/2.
 * @param input.density of the oil, hot [kg/m3], > 0
 * @param input.angularSpeed of the crankshaft [rad/s]
 * @param input.journalRadius where the oil enters [m], > 0
 * @param input.leastRadius nearest distance of the drilling to the axis [m], >= 0 and at most the journal's radius; 0
 * for a drilling through the middle
 * @returns pressure [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: a liquid column in rotation.
 */
export function centrifugalHead(input: {
  density: number;
  angularSpeed: number;
  journalRadius: number;
  leastRadius: number;
}): number {
  const { density, angularSpeed, journalRadius, leastRadius } = input;
  requireAll(positive, { density, journalRadius });
  requireAll(finite, { angularSpeed });
  requireAll(notNegative, { leastRadius });
  requireAll({ atMost: journalRadius }, { leastRadius });
  return (density * angularSpeed ** 2 * (journalRadius ** 2 - leastRadius ** 2)) / 2;
}
