/** One sample of a lift table. */
export interface LiftKnot {
  /** crank angle from overlap top dead centre [rad] */
  readonly angle: number;
  /** valve lift [m] */
  readonly lift: number;
}

/**
 * Slope of a monotone cubic at the middle of three samples: that of the parabola through them, but 0 where
 * the lift turns, and at most three times the flatter of the two chords, which keeps the cubic monotone.
 * @param before the sample before
 * @param here the sample in question
 * @param after the sample after
 * @returns slope [m/rad]
 *
 * Source: monotone piecewise cubic interpolation, numerical practice (common practice).
 */
export function limitedSlope(before: LiftKnot, here: LiftKnot, after: LiftKnot): number {
  const left = here.angle - before.angle;
  const right = after.angle - here.angle;
  const chordLeft = (here.lift - before.lift) / left;
  const chordRight = (after.lift - here.lift) / right;
  if (chordLeft * chordRight <= 0) return 0;
  const parabola = (right * chordLeft + left * chordRight) / (left + right);
  const steepest = 3 * Math.min(Math.abs(chordLeft), Math.abs(chordRight));
  return Math.sign(parabola) * Math.min(Math.abs(parabola), steepest);
}

/**
 * Second derivative of the least-squares parabola through the samples within a window about one of them, its
 * two neighbours always included.
 * @param knot the samples, counted on and back over the cycle
 * @param i the sample in question
 * @param count samples in one cycle
 * @param window half width [rad], >= 0
 * @returns curvature [m/rad2]
 *
 * Source: least squares with orthogonal polynomials, numerical practice (common practice).
 */
export function windowCurvature(
  knot: (i: number) => LiftKnot,
  i: number,
  count: number,
  window: number,
): number {
  const centre = knot(i).angle;
  // Samples an exact window away count, whatever the rounding of their angles.
  const reach = window * (1 + 1e-9);
  let [first, last] = [i - 1, i + 1];
  while (last - first < count - 1 && centre - knot(first - 1).angle <= reach) first--;
  while (last - first < count - 1 && knot(last + 1).angle - centre <= reach) last++;
  const points = Array.from({ length: last - first + 1 }, (_, k) => knot(first + k));
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const dot = (a: readonly number[], b: readonly number[]) => mean(a.map((value, k) => value * b[k]!));
  const offsets = points.map(({ angle }) => angle - centre);
  const middle = mean(offsets);
  const linear = offsets.map((t) => t - middle);
  const squares = linear.map((t) => t * t);
  const [level, tilt] = [mean(squares), dot(squares, linear) / dot(linear, linear)];
  const quadratic = linear.map((t) => t * t - level - tilt * t);
  const lifts = points.map(({ lift }) => lift);
  return (2 * dot(quadratic, lifts)) / dot(quadratic, quadratic);
}
