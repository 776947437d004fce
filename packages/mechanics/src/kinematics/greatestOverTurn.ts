import { leastOnInterval } from "../outline/leastOnInterval.ts";

/** Grid over one turn: two degrees is far finer than any lobe of the slider-crank's motion. */
const STEPS = 180;

/**
 * Greatest value of a smooth function over an interval, ends included: the least of its opposite.
 * @param value the function
 * @param from start of the interval
 * @param to end of the interval
 * @param steps cells of the grid; one cell must be narrower than the distance between neighbouring maxima
 * @returns the greatest value and where it lies, to about a millionth of a cell
 * @throws never itself; what `value` throws comes through
 *
 * Source: numerical practice: a grid, then golden sections.
 */
export function greatestBetween(
  value: (at: number) => number,
  from: number,
  to: number,
  steps = STEPS,
): { at: number; value: number } {
  const least = leastOnInterval((at) => -value(at), from, to, steps);
  return { at: least.at, value: -least.value };
}

/** One degree: fine enough for neighbouring peaks of orders up to the ninetieth. */
const TURN_CELLS = 360;

/**
 * Greatest value of a smooth periodic function over one turn of the crankshaft. Every peak of the grid is refined:
 * peaks of nearly one height are usual in engines, and the grid may rank them wrongly.
 * @param value the function of the crank angle [rad], period 2 pi
 * @param cells of the grid; one must be narrower than the distance between neighbouring peaks
 * @returns the greatest value and the crank angle [rad] where it lies, from 0 up to 2 pi; the first found where
 *   several are equal
 * @throws never itself; what `value` throws comes through
 *
 * Source: numerical practice: a grid, then every peak of it refined.
 */
export function greatestOverTurn(
  value: (angle: number) => number,
  cells = TURN_CELLS,
): { angle: number; value: number } {
  const turn = 2 * Math.PI;
  const step = turn / cells;
  const grid = new Float64Array(cells);
  for (let i = 0; i < cells; i++) grid[i] = value(i * step);
  let best = { value: grid[0]!, angle: 0 };
  for (let i = 0; i < cells; i++) {
    const here = grid[i]!;
    const before = grid[i === 0 ? cells - 1 : i - 1]!;
    const after = grid[i + 1 === cells ? 0 : i + 1]!;
    if (here < before || here < after) continue;
    // Where the value does not change there is nothing to refine.
    const flat = 2 * here - before - after <= 1e-13 * Math.abs(here);
    const peak = flat
      ? { at: i * step, value: here }
      : greatestBetween(value, (i - 1) * step, (i + 1) * step, 4);
    if (peak.value > best.value) best = { value: peak.value, angle: (peak.at + turn) % turn };
  }
  return best;
}
