/** Share of the longer part that a golden section cuts off. */
const cut = (3 - Math.sqrt(5)) / 2;
/** What is left of the bracket, as a share of it: half a nanometre for half a millimetre. */
const narrowest = 0.7e-6;
/** Golden sections alone would take 30; parabolas that lead nowhere cost some more. */
const mostSteps = 60;

/** A least value and where it was found. */
export interface Least {
  readonly at: number;
  readonly value: number;
}

/**
 * Closes in on a least value between two places: by a parabola through the three lowest points where that leads on, else
 * by a golden section.
 *
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives, ch. 5 (from memory).
 */
function closeIn(f: (at: number) => number, from: number, to: number, known?: Least): Least {
  let [low, high] = [from, to];
  const first = low + cut * (high - low);
  let best = known ?? { at: first, value: f(first) };
  let [second, third] = [best, best];
  const finest = narrowest * (high - low);
  let [step, before] = [0, 0];
  for (let count = 0; count < mostSteps; count++) {
    const middle = (low + high) / 2;
    if (Math.abs(best.at - middle) <= 2 * finest - (high - low) / 2) break;
    let isParabola = false;
    if (Math.abs(before) > finest) {
      const r = (best.at - second.at) * (best.value - third.value);
      const q = (best.at - third.at) * (best.value - second.value);
      const twice = 2 * (q - r);
      const way = (best.at - third.at) * q - (best.at - second.at) * r;
      const [p, by] = twice > 0 ? [-way, twice] : [way, -twice];
      const last = before;
      before = step;
      if (Math.abs(p) < Math.abs((by * last) / 2) && p > by * (low - best.at) && p < by * (high - best.at)) {
        step = p / by;
        isParabola = true;
        const at = best.at + step;
        if (at - low < 2 * finest || high - at < 2 * finest) step = best.at < middle ? finest : -finest;
      }
    }
    if (!isParabola) {
      before = (best.at < middle ? high : low) - best.at;
      step = cut * before;
    }
    const at = best.at + (Math.abs(step) >= finest ? step : step > 0 ? finest : -finest);
    const here = { at, value: f(at) };
    if (here.value <= best.value) {
      if (at < best.at) high = best.at;
      else low = best.at;
      [third, second, best] = [second, best, here];
    } else {
      if (at < best.at) low = at;
      else high = at;
      if (here.value <= second.value || second.at === best.at) [third, second] = [second, here];
      else if (here.value <= third.value || third.at === best.at || third.at === second.at) third = here;
    }
  }
  return best;
}

/**
 * Least value of a function on an interval: sampled evenly, ends included, then every sample that is no
 * higher than its neighbours is refined between them. A sample keeps its place where
 * refining finds nothing lower, so an end of the interval can be the least.
 * @param f function; between neighbouring samples with at most one minimum
 * @param from lower end
 * @param to upper end
 * @param count number of parts the interval is sampled in
 * @returns the least value found and where
 *
 * Source: a grid, then parabolas and golden sections between its points, numerical practice.
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
      const isInside = i > 0 && i < count;
      const known = isInside ? { at: at(i), value: here } : undefined;
      const refined = closeIn(f, at(Math.max(0, i - 1)), at(Math.min(count, i + 1)), known);
      if (refined.value < best.value) best = refined;
    }
    before = here;
    here = after;
  }
  return best;
}
