const MOST_STEPS = 100;

/**
 * Root of an increasing function by regula falsi with the Illinois change, which closes in from both sides.
 * @param value the function
 * @param low where it is below zero
 * @param high where it is not below zero; moved up by doubling the distance from `low` until that is so
 * @param tolerance of the root's place
 * @returns the root
 * @throws RangeError when no place is found where the function is not below zero
 */
export function solveIncreasing(
  value: (at: number) => number,
  low: number,
  high: number,
  tolerance: number,
): number {
  let [from, to] = [low, high];
  let [below, above] = [value(from), value(to)];
  for (let step = 0; above < 0; step++) {
    if (step > MOST_STEPS) throw new RangeError(`root: found none up to ${to}, expected one above ${low}`);
    const next = low + 2 * (to - low);
    [from, below, to] = [to, above, next];
    above = value(to);
  }
  let kept = 0;
  for (let step = 0; step < MOST_STEPS && to - from > tolerance; step++) {
    const at = (from * above - to * below) / (above - below);
    const here = value(at);
    if (here === 0) return at;
    if (here < 0) {
      if (Math.abs(at - from) < tolerance) return at;
      [from, below] = [at, here];
      if (kept < 0) above /= 2;
      kept = -1;
    } else {
      if (Math.abs(at - to) < tolerance) return at;
      [to, above] = [at, here];
      if (kept > 0) below /= 2;
      kept = 1;
    }
  }
  return (from * above - to * below) / (above - below);
}
