/** Slopes of x and y at a place, written into the array. */
export type PlaneSlope = (at: number, x: number, y: number, into: Float64Array) => void;

export interface PlaneSpan {
  readonly from: number;
  readonly to: number;
  readonly x: number;
  readonly y: number;
  /** error of a step */
  readonly tolerance: number;
  readonly widest: number;
}

/** Points inside a step at which the path is looked at. */
export const INNER = [0.25, 0.5, 0.75] as const;
const SAFETY = 0.9;
const NARROWEST_SHARE = 1e-9;

/** A step grows and shrinks by no more than this, and shares of the error beyond which it would. */
const GROWS = 3;
const SHRINKS = 0.2;
const LITTLE = (SAFETY / GROWS) ** 3;
const MUCH = (SAFETY / SHRINKS) ** 3;

/** Factor on a step whose error is this share of what is allowed; what is no number is far too much. */
export const factorFor = (share: number) => {
  if (share <= LITTLE) return GROWS;
  return share < MUCH ? SAFETY * Math.cbrt(1 / share) : SHRINKS;
};

/** @throws RangeError when a step over an interval has become too small to go on */
export function requireStep(step: number, interval: number): void {
  if (step <= NARROWEST_SHARE * interval)
    throw new RangeError(`step: found ${step}, expected the path to allow wider ones`);
}

/**
 * Follows x and y over an interval by the Runge-Kutta pair of third and second order of Bogacki and Shampine, with
 * steps fitted to the error.
 * @param slope of the path
 * @param span interval, start, tolerance and widest step
 * @param watch is told the path at every step and at three points inside it, by the cubic through both ends
 * @returns x and y at the end
 * @throws RangeError when the steps become too small to go on
 *
 * Source: P. Bogacki, L. F. Shampine (coefficients from memory; order held in the tests).
 */
export function bogackiShampine(
  slope: PlaneSlope,
  span: PlaneSpan,
  watch?: (at: number, x: number, y: number) => void,
): [number, number] {
  const { from, to, tolerance, widest } = span;
  let { x, y } = span;
  let [first, last] = [new Float64Array(2), new Float64Array(2)];
  const [second, third] = [new Float64Array(2), new Float64Array(2)];
  let at = from;
  let step = Math.min(widest, to - from);
  slope(at, x, y, first);
  while (at < to) {
    const closes = at + step >= to;
    if (closes) step = to - at;
    slope(at + step / 2, x + (step / 2) * first[0]!, y + (step / 2) * first[1]!, second);
    slope(at + 0.75 * step, x + 0.75 * step * second[0]!, y + 0.75 * step * second[1]!, third);
    const [x1, x2, x3] = [first[0]!, second[0]!, third[0]!];
    const [y1, y2, y3] = [first[1]!, second[1]!, third[1]!];
    const nextX = x + (step / 9) * (2 * x1 + 3 * x2 + 4 * x3);
    const nextY = y + (step / 9) * (2 * y1 + 3 * y2 + 4 * y3);
    slope(at + step, nextX, nextY, last);
    const [x4, y4] = [last[0]!, last[1]!];
    const errorX = -5 * x1 + 6 * x2 + 8 * x3 - 9 * x4;
    const errorY = -5 * y1 + 6 * y2 + 8 * y3 - 9 * y4;
    const share = ((step / 72) * Math.sqrt(errorX * errorX + errorY * errorY)) / tolerance;
    const factor = factorFor(share);
    if (share <= 1) {
      if (watch !== undefined) {
        for (const t of INNER) {
          const [rise, early, late] = [t * t * (3 - 2 * t), step * t * (1 - t) ** 2, step * t * t * (1 - t)];
          const alongX = x + rise * (nextX - x) + early * x1 - late * x4;
          const alongY = y + rise * (nextY - y) + early * y1 - late * y4;
          watch(at + t * step, alongX, alongY);
        }
        watch(at + step, nextX, nextY);
      }
      at = closes ? to : at + step;
      [x, y] = [nextX, nextY];
      [first, last] = [last, first];
    } else requireStep(step, to - from);
    step = Math.min(widest, step * factor);
  }
  return [x, y];
}
