import { notNegative, positive, requireAll } from "../check/requireAll.ts";

const BAR = 1e5;
/** One thousand revolutions a minute [rad/s]. */
const THOUSAND = (1000 * 2 * Math.PI) / 60;

/**
 * Friction mean effective pressure of a spark-ignition engine by its speed alone, with what the gas exchange and
 * the engine's own pumps take: 0.97 + 0.15 (n/1000) + 0.05 (n/1000)^2 bar, n in revolutions a minute.
 * @param angularSpeed crankshaft speed [rad/s], > 0; fitted to four-cylinder engines of 0.8 to 1.3 litres at wide open
 * throttle up to about 6000 revolutions a minute
 * @returns pressure [Pa]
 * @throws RangeError when the speed is not above zero
 *
 * Source: Barnes-Moss, as given in Heywood, Internal Combustion Engine Fundamentals, eq. 13.6.
 */
export function frictionBySpeed(angularSpeed: number): number {
  requireAll(positive, { angularSpeed });
  const thousands = angularSpeed / THOUSAND;
  return (0.97 + 0.15 * thousands + 0.05 * thousands ** 2) * BAR;
}

/**
 * Friction mean effective pressure by piston speed and peak pressure, 0.137 bar + 0.005 p_max + 0.162 bar s/m S_p.
 * @param input.peakPressure of the gas [Pa], >= 0
 * @param input.meanPistonSpeed [m/s], >= 0
 * @returns pressure [Pa]
 * @throws RangeError when a value is negative
 *
 * Source: form of Chen and Flynn, constants from memory; makers fit them to each engine.
 */
export function frictionByLoad(input: { peakPressure: number; meanPistonSpeed: number }): number {
  const { peakPressure, meanPistonSpeed } = input;
  requireAll(notNegative, { peakPressure, meanPistonSpeed });
  return 0.137 * BAR + 0.005 * peakPressure + 0.162 * BAR * meanPistonSpeed;
}
