import { type Fit, fitClose } from "./fitAims.ts";
import { stepEffects } from "./stepEffects.ts";
import { stepsNear } from "./steps.ts";
import { type Trial, worstMiss } from "./Trial.ts";

/** Wanted dimensions up to which every way of rounding up and down is tried. */
const MOST_TOGETHER = 10;

/** A dimension that is held at a size stays there; where no step lies inside the bounds, so does the size. */
function optionsOf(trial: Trial, sizes: readonly number[], reach: number): readonly (readonly number[])[] {
  return trial.wanted.map((wanted, index) => {
    if (wanted.low === wanted.high) return [wanted.low];
    const steps = stepsNear(sizes[index]!, wanted, reach);
    return steps.length === 0 ? [sizes[index]!] : steps;
  });
}

/**
 * The sizes as they can be ordered: of all ways of rounding each to a whole step, the one that misses the aims least.
 * @param reach steps below and above each size that are tried
 */
export function roundSizes(trial: Trial, { sizes }: Fit, reach = 1): Fit {
  const choices = optionsOf(trial, sizes, reach);
  const tried = (point: readonly number[]): Fit => ({ sizes: point, off: worstMiss(trial.misses(point)) });
  if (choices.length <= MOST_TOGETHER) {
    let best: Fit | undefined;
    const go = (chosen: readonly number[]): void => {
      if (chosen.length === choices.length) {
        const one = tried(chosen);
        if (best === undefined || one.off < best.off) best = one;
        return;
      }
      for (const value of choices[chosen.length]!) go([...chosen, value]);
    };
    go([]);
    return best!;
  }
  let best = tried(choices.map((values) => values[0]!));
  for (let better = true; better; ) {
    better = false;
    for (const [index, values] of choices.entries())
      for (const value of values) {
        const one = tried(best.sizes.with(index, value));
        if (one.off < best.off) {
          best = one;
          better = true;
        }
      }
  }
  return best;
}

const closer = (best: Fit, one: Fit): Fit => (one.off < best.off ? one : best);

/**
 * The same where some dimensions may be chosen freely: one after the other is put on a step and the others make up for
 * it exactly, until none is free; the rest is rounded. First go those whose steps move the aims most; of the last each
 * is tried.
 * @param freedom how many dimensions may be chosen freely
 * @param reach steps below and above each of the others that are tried
 * @param wide steps below and above, of those that may be chosen freely, that are tried
 */
export function roundFreely(trial: Trial, fit: Fit, freedom: number, reach = 1, wide = 1): Fit {
  const plain = roundSizes(trial, fit, reach);
  if (freedom <= 0) return plain;
  const loose = trial.wanted.flatMap(({ low, high }, index) => (low < high ? [index] : []));
  if (loose.length <= 1) return plain;
  const effects = stepEffects(trial, fit.sizes);
  const [coarsest] = [...loose].sort((a, b) => effects[b]! - effects[a]!);
  const tries = (freedom > 1 ? [coarsest!] : loose).flatMap((index) =>
    stepsNear(fit.sizes[index]!, trial.wanted[index]!, wide).map((size) => {
      const held = trial.holding(index, size);
      return roundFreely(held, fitClose(held, fit.sizes.with(index, size)), freedom - 1, reach, wide);
    }),
  );
  return tries.reduce(closer, plain);
}
