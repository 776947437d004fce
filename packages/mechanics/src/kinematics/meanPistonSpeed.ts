import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Mean piston speed: two strokes per turn, 2 S n = S omega / pi.
 * @param input.stroke true piston stroke S [m], > 0
 * @param input.angularSpeed crankshaft speed [rad/s], >= 0
 * @returns mean piston speed [m/s]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals.
 */
export function meanPistonSpeed(input: { stroke: number; angularSpeed: number }): number {
  const { stroke, angularSpeed } = input;
  requireAll(positive, { stroke });
  requireAll(notNegative, { angularSpeed });
  return (stroke * angularSpeed) / Math.PI;
}
