import { finite, notNegative, requireAll, requireThat } from "../check/requireAll.ts";
import { fourStrokeCycle, withinCycle } from "./fourStrokeCycle.ts";
import type { LiftCurve } from "./LiftCurve.ts";
import { type LiftKnot, limitedSlope, windowCurvature } from "./liftKnots.ts";

/** Widest step with the valve off its seat: 20 degrees of crank, beyond which a table says little. */
const widestStep = Math.PI / 9;
/** Widest half window of the curvature: 30 degrees of crank, well inside the nose of any lobe. */
const widestWindow = Math.PI / 6;

function requireSamples(samples: readonly LiftKnot[]): void {
  requireThat(samples.length >= 4, "samples", samples.length, "at least 4 of them");
  samples.forEach(({ angle, lift }, i) => {
    requireAll(finite, { [`samples[${i}].angle`]: angle });
    requireAll(notNegative, { [`samples[${i}].lift`]: lift });
  });
  samples.forEach(({ angle, lift }, i) => {
    const last = i === samples.length - 1;
    const next = last ? samples[0]! : samples[i + 1]!;
    const step = next.angle + (last ? fourStrokeCycle : 0) - angle;
    const name = `samples[${i}].angle`;
    requireThat(step > 0, name, angle, last ? "less than a cycle after the first" : "below the next");
    requireThat(
      step <= widestStep * (1 + 1e-9) || (lift === 0 && next.lift === 0),
      name,
      angle,
      "at most 20 degrees of crank before the next sample unless the valve is shut at both",
    );
  });
}

/**
 * Lift curve through a measured table. Between samples it is a cubic that never rises above the higher or
 * falls below the lower of its two samples, so a shut valve stays shut and the greatest lift is one that was
 * measured; it repeats with the cycle. Its slope is the cubic's own. Its curvature is taken from the table by
 * parabolas fitted to the samples about each sample and runs straight from one to the next, because second
 * differences blow up the rounding of a table: 0.01 mm in 1 degree steps is 33 mm/rad2, three times a nose.
 * @param input.samples crank angle from overlap top dead centre [rad], ascending within one cycle, and valve
 * lift [m], >= 0, with the lash taken off; steps of at most 20 degrees of crank wherever the valve is open
 * @param input.curvatureWindow half width of the fit [rad of crank], 0 to 30 degrees; 0 takes the neighbours
 * only, for a calculated table
 * @returns the curve
 * @throws RangeError when the table cannot be read so
 *
 * Source: monotone piecewise cubic interpolation and least squares, numerical practice (common practice).
 */
export function liftTableCurve(input: { samples: readonly LiftKnot[]; curvatureWindow: number }): LiftCurve {
  const { samples, curvatureWindow } = input;
  requireAll({ atLeast: 0, atMost: widestWindow }, { curvatureWindow });
  requireSamples(samples);
  const count = samples.length;
  const start = samples[0]!.angle;
  const knot = (i: number): LiftKnot => {
    const { angle, lift } = samples[((i % count) + count) % count]!;
    return { angle: angle + Math.floor(i / count) * fourStrokeCycle, lift };
  };
  const slopes = samples.map((_, i) => limitedSlope(knot(i - 1), knot(i), knot(i + 1)));
  const curvatures = samples.map((_, i) => windowCurvature(knot, i, count, curvatureWindow));

  const cellOf = (angle: number): number => {
    let low = 0;
    let high = count;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (samples[middle]!.angle <= angle) low = middle;
      else high = middle;
    }
    return low;
  };

  const at = (angle: number) => {
    if (!Number.isFinite(angle)) requireAll(finite, { angle });
    const within = withinCycle(angle, start);
    const i = cellOf(within);
    const [from, to] = [knot(i), knot(i + 1)];
    const step = to.angle - from.angle;
    const t = (within - from.angle) / step;
    const [slopeFrom, slopeTo] = [slopes[i]!, slopes[(i + 1) % count]!];
    const rise = to.lift - from.lift;
    // Hermite cubic from the lower sample, in powers of t.
    const second = 3 * rise - step * (2 * slopeFrom + slopeTo);
    const third = step * (slopeFrom + slopeTo) - 2 * rise;
    return {
      lift: Math.max(0, from.lift + t * (step * slopeFrom + t * (second + t * third))),
      slope: slopeFrom + (t * (2 * second + 3 * t * third)) / step,
      curvature: (1 - t) * curvatures[i]! + t * curvatures[(i + 1) % count]!,
    };
  };
  return { at };
}
