import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { seeded } from "../../derive/seeded.ts";
import { crossings } from "./crossings.ts";
import { polish } from "./polish.ts";
import { type Trial, worstMiss } from "./Trial.ts";

/** What the numerics came to, sizes [SI]. */
export interface Fit {
  readonly sizes: readonly number[];
  /** Farthest that an aim is off, in its allowances; met when at most `MET`. */
  readonly off: number;
}

/** An aim is met when it is off by no more than this share of its allowance. */
export const MET = 1;
/** The search goes on until it is far inside. */
const CLOSE = 1e-6;
const STARTS = 24;

function sumOfSquares(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}

/** Places to begin: the middle, then places spread over the ranges, the same in every run. */
function starts(count: number): readonly (readonly number[])[] {
  const draw = seeded(1, "solve", 0);
  return [
    Array.from({ length: count }, () => 0.5),
    ...Array.from({ length: STARTS - 1 }, () => Array.from({ length: count }, () => draw())),
  ];
}

/** One descent from a place, inside the ranges. */
function descend(trial: Trial, from: readonly number[]): Fit {
  const at = (point: readonly number[]) => trial.misses(trial.sizesAt(point));
  // The library wants two points at least: what is added is met everywhere.
  const index = Array.from({ length: Math.max(2, trial.aims.length) }, (_, number) => number);
  try {
    const { parameterValues } = levenbergMarquardt(
      { x: index, y: index.map(() => 0) },
      (point) => {
        let key = "";
        let misses: readonly number[] = [];
        return (number) => {
          const now = point.join();
          if (now !== key) {
            key = now;
            misses = at(point);
          }
          return misses[number] ?? 0;
        };
      },
      {
        initialValues: [...from],
        minValues: from.map(() => 0),
        maxValues: from.map(() => 1),
        damping: 1e-2,
        gradientDifference: 1e-6,
        centralDifference: true,
        maxIterations: 60,
        errorTolerance: 1e-14,
      },
    );
    const sizes = trial.sizesAt(parameterValues);
    return { sizes, off: worstMiss(trial.misses(sizes)) };
  } catch {
    // Where the matrix of the step cannot be inverted, this place leads nowhere.
    const sizes = trial.sizesAt(from);
    return { sizes, off: worstMiss(trial.misses(sizes)) };
  }
}

/** Descents, the nearest ones, from which it goes on where none has met the aims. */
const POLISHED = 3;

/** The places to begin at, from where the aims are missed least at first; before all, one that is given. */
function orderedStarts(trial: Trial, near?: readonly number[]): readonly (readonly number[])[] {
  const places = [...(near === undefined ? [] : [trial.pointOf(near)]), ...starts(trial.wanted.length)];
  const [first, ...rest] = places.map((point) => ({
    point,
    cost: sumOfSquares(trial.misses(trial.sizesAt(point))),
  }));
  return [first!, ...rest.sort((a, b) => a.cost - b.cost)].map(({ point }) => point);
}

const nearer = (best: Fit, one: Fit): Fit => (one.off < best.off ? one : best);

/** Goes on from some sizes, one after the other, until the aims are met. */
function polishedFrom(trial: Trial, places: Iterable<readonly number[]>, best: Fit): Fit {
  let found = best;
  for (const place of places) {
    if (found.off < CLOSE) break;
    const sizes = polish(trial, place);
    found = nearer(found, { sizes, off: worstMiss(trial.misses(sizes)) });
  }
  return found;
}

/**
 * Sizes of the wanted dimensions at which every aim is met, or come nearest: Levenberg and Marquardt's descent from
 * several places; where none of them meets the aims, Gauss and Newton's from where these came nearest and from the
 * places themselves, which a descent may have left for the wrong side of a bend; at last along the range of each dimension.
 * @param near a place from which to begin first [SI]
 */
export function fitAims(trial: Trial, near?: readonly number[]): Fit {
  const places = orderedStarts(trial, near);
  const fits: Fit[] = [];
  for (const place of places) {
    const fit = descend(trial, place);
    if (fit.off < CLOSE) return fit;
    fits.push(fit);
  }
  const nearest = [...fits].sort((a, b) => a.off - b.off).slice(0, POLISHED);
  const again = [...nearest.map(({ sizes }) => sizes), ...places.map((place) => trial.sizesAt(place))];
  const found = polishedFrom(trial, again, nearest.reduce(nearer));
  if (found.off <= MET || trial.isDear) return found;
  return polishedFrom(trial, crossings(trial, fitNear), found);
}

/** From one place only: by whole steps where that leads there, since it is near as a rule, otherwise by a descent. */
export function fitClose(trial: Trial, near: readonly number[]): Fit {
  const fit = polishedFrom(trial, [near], { sizes: near, off: Number.POSITIVE_INFINITY });
  return fit.off < CLOSE ? fit : nearer(fit, fitNear(trial, near));
}

/** From one place only. */
function fitNear(trial: Trial, near: readonly number[]): Fit {
  const fit = descend(trial, trial.pointOf(near));
  return polishedFrom(trial, [fit.sizes, near], fit);
}

/** Share of the ranges within which two solutions are one. */
const SAME = 1e-6;

/** Every other place that the descents find at which all aims are met: there may be several. */
export function otherFits(trial: Trial, known: Fit): readonly Fit[] {
  const isSame = (a: Fit, b: Fit) => {
    const there = trial.pointOf(b.sizes);
    return trial.pointOf(a.sizes).every((share, index) => Math.abs(share - there[index]!) < SAME);
  };
  const found: Fit[] = [];
  for (const place of orderedStarts(trial)) {
    const fit = descend(trial, place);
    if (fit.off < CLOSE && ![known, ...found].some((one) => isSame(one, fit))) found.push(fit);
  }
  return found;
}
