import { greatestOverTurn } from "./greatestOverTurn.ts";
import { pistonAccelerationOver } from "./pistonAcceleration.ts";
import type { SliderCrank } from "./SliderCrank.ts";

/** Five degrees: the slider-crank has no order of any size above the tenth. */
const CELLS = 72;

/**
 * Greatest magnitude of the piston's acceleration over a turn: at top dead centre without an offset
 * (r omega^2 (1 + r/l)), within a fraction of a degree of it with one.
 * @param crank the mechanism
 * @param angularSpeed crankshaft speed [rad/s], constant
 * @returns magnitude of the acceleration [m/s2], >= 0, and crank angle [rad] in one turn
 * @throws RangeError when the mechanism cannot turn or the speed is not finite
 *
 * Source: plane geometry; maximum found numerically.
 */
export function greatestPistonAcceleration(
  crank: SliderCrank,
  angularSpeed: number,
): { acceleration: number; angle: number } {
  const acceleration = pistonAccelerationOver(crank, angularSpeed);
  const found = greatestOverTurn((angle) => Math.abs(acceleration(angle)), CELLS);
  return { acceleration: found.value, angle: found.angle };
}
