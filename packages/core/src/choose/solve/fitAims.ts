import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { seeded } from "../../derive/seeded.ts";
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

/**
 * Sizes of the wanted dimensions at which every aim is met, or come nearest: Levenberg and Marquardt's descent from
 * several places.
 * @param near a place from which to begin first [SI]
 */
export function fitAims(trial: Trial, near?: readonly number[]): Fit {
  const places = starts(trial.wanted.length);
  const ordered = [...(near === undefined ? [] : [trial.pointOf(near)]), ...places].map((point) => ({
    point,
    cost: sumOfSquares(trial.misses(trial.sizesAt(point))),
  }));
  const [first, ...rest] = ordered;
  const tried = [first!, ...rest.sort((a, b) => a.cost - b.cost)];
  let best: Fit | undefined;
  for (const { point } of tried) {
    const fit = descend(trial, point);
    if (best === undefined || fit.off < best.off) best = fit;
    if (best.off < CLOSE) break;
  }
  return best!;
}
