const inverseGolden = (Math.sqrt(5) - 1) / 2;
/** Golden-section steps: 0.618^28 = 1.4e-6 of the bracket is left, under a nanometre for half a millimetre. */
const steps = 28;

/** A least value and where it was found. */
export interface Least {
  readonly at: number;
  readonly value: number;
}

function goldenSection(f: (at: number) => number, from: number, to: number): Least {
  let low = from;
  let high = to;
  let a = high - inverseGolden * (high - low);
  let b = low + inverseGolden * (high - low);
  let fa = f(a);
  let fb = f(b);
  for (let step = 0; step < steps; step++) {
    if (fa <= fb) {
      high = b;
      b = a;
      fb = fa;
      a = high - inverseGolden * (high - low);
      fa = f(a);
    } else {
      low = a;
      a = b;
      fa = fb;
      b = low + inverseGolden * (high - low);
      fb = f(b);
    }
  }
  return fa <= fb ? { at: a, value: fa } : { at: b, value: fb };
}

/**
 * Least value of a function on an interval: sampled evenly, ends included, then every sample that is no
 * higher than its neighbours is refined by golden section between them. A sample keeps its place where
 * refining finds nothing lower, so an end of the interval can be the least.
 * @param f function; between neighbouring samples with at most one minimum
 * @param from lower end
 * @param to upper end
 * @param count number of parts the interval is sampled in
 * @returns the least value found and where
 *
 * Source: golden section, plane numerical practice (common practice).
 */
export function leastOnInterval(f: (at: number) => number, from: number, to: number, count: number): Least {
  const step = (to - from) / count;
  const at = (i: number): number => (i === count ? to : from + i * step);
  let best: Least = { at: from, value: Number.POSITIVE_INFINITY };
  let before = Number.POSITIVE_INFINITY;
  let here = f(from);
  for (let i = 0; i <= count; i++) {
    const after = i === count ? Number.POSITIVE_INFINITY : f(at(i + 1));
    if (here < best.value) best = { at: at(i), value: here };
    if (here <= before && here < after) {
      const refined = goldenSection(f, at(Math.max(0, i - 1)), at(Math.min(count, i + 1)));
      if (refined.value < best.value) best = refined;
    }
    before = here;
    here = after;
  }
  return best;
}
