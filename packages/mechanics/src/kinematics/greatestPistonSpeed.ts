import { greatestOverTurn } from "./greatestOverTurn.ts";
import { pistonVelocityOver } from "./pistonVelocity.ts";
import type { SliderCrank } from "./SliderCrank.ts";

/** Five degrees: the slider-crank has no order of any size above the tenth. */
const CELLS = 72;

/**
 * Greatest magnitude of the piston's velocity over a turn and the crank angle where it lies.
 * @param crank the mechanism
 * @param angularSpeed crankshaft speed [rad/s]
 * @returns speed [m/s], >= 0, and crank angle [rad] in one turn; without an offset the upstroke has a twin
 * @throws RangeError when the mechanism cannot turn or the speed is not finite
 *
 * Source: plane geometry; maximum found numerically.
 */
export function greatestPistonSpeed(
  crank: SliderCrank,
  angularSpeed: number,
): { speed: number; angle: number } {
  const velocity = pistonVelocityOver(crank, angularSpeed);
  const found = greatestOverTurn((angle) => Math.abs(velocity(angle)), CELLS);
  return { speed: found.value, angle: found.angle };
}
