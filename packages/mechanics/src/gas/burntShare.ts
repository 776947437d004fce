import { finite, positive, requireAll } from "../check/requireAll.ts";

/**
 * Course of burning over crank angle. The heat is released as 1 - exp(-a y^(m + 1)) with y from 0 at the start
 * to 1 at the end of burning.
 */
export interface Burning {
  /** crank angle at which heat begins to be released [rad], 0 at firing top dead centre, negative before it */
  readonly start: number;
  /** crank angle from start to end [rad], > 0 */
  readonly duration: number;
  /** how complete the burning is at its end, a [-], > 0; 5 leaves 0.7 % unburnt */
  readonly efficiencyFactor: number;
  /** shape m [-], > -1; 2 is usual for spark ignition */
  readonly formFactor: number;
}

/** The usual shape of spark-ignition burning (Heywood): a = 5, m = 2. */
export const usualBurning = { efficiencyFactor: 5, formFactor: 2 } as const;

/**
 * The share burnt as a function of the crank angle, checked once: for sweeps. See {@link burntShare}.
 * @param burning its course
 * @returns crank angle [rad] → share [-]
 * @throws RangeError when a value is out of range
 *
 * Source: Wiebe, see {@link burntShare}.
 */
export function burntShareOver(burning: Burning): (angle: number) => number {
  const { start, duration, efficiencyFactor, formFactor } = burning;
  requireAll(finite, { start });
  requireAll(positive, { duration, efficiencyFactor });
  requireAll({ above: -1 }, { formFactor });
  const complete = 1 - Math.exp(-efficiencyFactor);
  return (angle) => {
    if (angle <= start) return 0;
    const progress = (angle - start) / duration;
    return progress < 1 ? 1 - Math.exp(-efficiencyFactor * progress ** (formFactor + 1)) : complete;
  };
}

/**
 * Share of the fuel's heat released up to a crank angle (Wiebe function).
 * @param burning its course
 * @param angle crank angle [rad]
 * @returns share [-], 0 before the start, constant after the end
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals, eq. 9.30.
 */
export function burntShare(burning: Burning, angle: number): number {
  requireAll(finite, { angle });
  return burntShareOver(burning)(angle);
}
