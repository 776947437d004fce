import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/** A steadily loaded plain bearing, short along the axis. */
export interface ShortBearing {
  /** dynamic viscosity of the oil in the film [Pa s], > 0 */
  readonly viscosity: number;
  /** of the journal [rad/s], > 0 */
  readonly angularSpeed: number;
  /** [m], > 0 */
  readonly journalDiameter: number;
  /** effective length of the shell [m], > 0; good below half the diameter, 10-20 % off at the diameter */
  readonly length: number;
  /** half the diametral clearance [m], > 0 */
  readonly radialClearance: number;
}

/**
 * {@link shortBearingLoad} by the eccentricity, the bearing checked once: for searches.
 * @param bearing the bearing as in {@link ShortBearing}
 * @returns eccentricity [-], 0 up to 1 → load [N]
 * @throws RangeError when a value of the bearing is out of range
 *
 * Source: Ocvirk; Hamrock, Fundamentals of Fluid Film Lubrication.
 */
export function shortBearingLoadOver(bearing: ShortBearing): (eccentricity: number) => number {
  const { viscosity, angularSpeed, journalDiameter, length, radialClearance } = bearing;
  requireAll(positive, { viscosity, angularSpeed, journalDiameter, length, radialClearance });
  const scale = (viscosity * angularSpeed * (journalDiameter / 2) * length ** 3) / (4 * radialClearance ** 2);
  return (eccentricity) => {
    const squared = eccentricity * eccentricity;
    const rest = 1 - squared;
    return (scale * eccentricity * Math.sqrt(Math.PI ** 2 * rest + 16 * squared)) / (rest * rest);
  };
}

/**
 * Load a short bearing carries at a given eccentricity (Ocvirk).
 * @param input.eccentricity offset of the journal over the radial clearance [-], 0 up to 1
 * @param input the bearing as in {@link ShortBearing}
 * @returns load [N]
 * @throws RangeError when a value is out of range
 *
 * Source: Ocvirk; Hamrock, Fundamentals of Fluid Film Lubrication.
 */
export function shortBearingLoad(input: ShortBearing & { readonly eccentricity: number }): number {
  requireAll({ atLeast: 0, below: 1 }, { eccentricity: input.eccentricity });
  return shortBearingLoadOver(input)(input.eccentricity);
}

/**
 * Eccentricity at which a short bearing carries a steady load (Ocvirk), by bisection; the load rises with it.
 * Use the mean load over the cycle, not the peak.
 * @param input.load steady load [N], >= 0
 * @param input the bearing as in {@link ShortBearing}
 * @returns offset of the journal over the radial clearance [-], 0 up to 1
 * @throws RangeError when a value is out of range
 *
 * Source: Ocvirk; Hamrock, Fundamentals of Fluid Film Lubrication.
 */
export function shortBearingEccentricity(input: ShortBearing & { readonly load: number }): number {
  requireAll(notNegative, { load: input.load });
  const loadAt = shortBearingLoadOver(input);
  let low = 0;
  let high = 1;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (loadAt(middle) > input.load) high = middle;
    else low = middle;
  }
  return low;
}

/**
 * Sommerfeld number of a short bearing at a given eccentricity (Ocvirk):
 * S (L/D)^2 = (1 - eps^2)^2 / (pi eps sqrt(pi^2 (1 - eps^2) + 16 eps^2)).
 * @param input.eccentricity offset of the journal over the radial clearance [-], above 0 and below 1
 * @param input.lengthRatio length over diameter [-], > 0
 * @returns Sommerfeld number [-]
 * @throws RangeError when a value is out of range
 *
 * Source: Ocvirk, NACA TN 2808.
 */
export function shortBearingSommerfeld(input: { eccentricity: number; lengthRatio: number }): number {
  const { eccentricity, lengthRatio } = input;
  requireAll({ above: 0, below: 1 }, { eccentricity });
  requireAll(positive, { lengthRatio });
  const rest = 1 - eccentricity ** 2;
  const shape = Math.PI * eccentricity * Math.sqrt(Math.PI ** 2 * rest + 16 * eccentricity ** 2);
  return rest ** 2 / (shape * lengthRatio ** 2);
}

/**
 * Attitude angle of a short bearing: from the load line to the line of centres,
 * tan(angle) = pi sqrt(1 - eps^2) / (4 eps).
 * @param eccentricity offset of the journal over the radial clearance [-], 0 up to 1
 * @returns angle [rad], a quarter turn unloaded, towards 0 as the film collapses
 * @throws RangeError when the eccentricity is out of range
 *
 * Source: Ocvirk, NACA TN 2808.
 */
export function shortBearingAttitude(eccentricity: number): number {
  requireAll({ atLeast: 0, below: 1 }, { eccentricity });
  return Math.atan2(Math.PI * Math.sqrt(1 - eccentricity ** 2), 4 * eccentricity);
}
