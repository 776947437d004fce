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

/**
 * Greatest value of a smooth periodic function over one turn of the crankshaft.
 * @param value the function of the crank angle [rad], period 2 pi
 * @returns the greatest value and the crank angle [rad] where it lies, from 0 up to 2 pi
 */
export function greatestOverTurn(value: (angle: number) => number): { angle: number; value: number } {
  // Half a cell either side of the turn, so that a maximum at 0 is not cut in two.
  const margin = Math.PI / STEPS;
  const found = greatestBetween(value, -margin, 2 * Math.PI - margin);
  return { angle: found.at < 0 ? found.at + 2 * Math.PI : found.at, value: found.value };
}
