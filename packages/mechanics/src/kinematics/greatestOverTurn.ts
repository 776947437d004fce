/** Grid over one turn: two degrees is far finer than any lobe of the slider-crank's motion. */
const STEPS = 180;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Greatest value of a smooth function over an interval: grid, then golden-section search in the two cells
 * around the best grid point until they are narrower than 1e-9 of the interval.
 * @param value the function
 * @param from start of the interval
 * @param to end of the interval
 * @param steps cells of the grid; one cell must be narrower than the distance between neighbouring maxima
 * @returns the greatest value and where it lies
 */
export function greatestBetween(
  value: (at: number) => number,
  from: number,
  to: number,
  steps = STEPS,
): { at: number; value: number } {
  const step = (to - from) / steps;
  let at = from;
  for (let i = 1; i <= steps; i++) {
    if (value(from + i * step) > value(at)) at = from + i * step;
  }
  let low = Math.max(from, at - step);
  let high = Math.min(to, at + step);
  while (high - low > 1e-9 * (to - from)) {
    const left = high - GOLDEN * (high - low);
    const right = low + GOLDEN * (high - low);
    if (value(left) > value(right)) high = right;
    else low = left;
  }
  // The middle of the bracket is kept only if it beats the grid point, so an end point can win.
  const middle = (low + high) / 2;
  return value(middle) > value(at) ? { at: middle, value: value(middle) } : { at, value: value(at) };
}

/** One degree: fine enough for neighbouring peaks of orders up to the ninetieth. */
const TURN_CELLS = 360;

/**
 * Greatest value of a smooth periodic function over one turn of the crankshaft. Every peak of the grid is refined:
 * peaks of nearly one height are usual in engines, and the grid may rank them wrongly.
 * @param value the function of the crank angle [rad], period 2 pi
 * @returns the greatest value and the crank angle [rad] where it lies, from 0 up to 2 pi; the first found where
 *   several are equal
 */
export function greatestOverTurn(value: (angle: number) => number): { angle: number; value: number } {
  const turn = 2 * Math.PI;
  const step = turn / TURN_CELLS;
  const grid = Array.from({ length: TURN_CELLS }, (_, i) => value(i * step));
  let best = { value: grid[0]!, angle: 0 };
  grid.forEach((here, i) => {
    const [before, after] = [grid.at(i - 1)!, grid[(i + 1) % TURN_CELLS]!];
    if (here < before || here < after) return;
    // Where the value does not change there is nothing to refine.
    const flat = 2 * here - before - after <= 1e-13 * Math.abs(here);
    const peak = flat
      ? { at: i * step, value: here }
      : greatestBetween(value, (i - 1) * step, (i + 1) * step, 4);
    if (peak.value > best.value) best = { value: peak.value, angle: (peak.at + turn) % turn };
  });
  return best;
}
