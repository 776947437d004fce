import type { Steps } from "../../derive/Steps.ts";
import { type Fit, fitAims } from "./fitAims.ts";
import { type Trial, worstMiss } from "./Trial.ts";
import type { Wanted } from "./Wanted.ts";

/** Wanted dimensions up to which every way of rounding up and down is tried. */
const MOST_TOGETHER = 10;

/** Whole steps just below and above a size that lie inside the bounds; the size itself where no step does. */
function steppedOf(size: number, { low, high, step }: Wanted): readonly number[] {
  const slack = 1e-9 * step;
  const below = Math.floor(size / step + 1e-9);
  const inside = [below, below + 1]
    .map((count) => Number((count * step).toPrecision(12)))
    .filter((value) => value >= low - slack && value <= high + slack);
  return inside.length === 0 ? [size] : inside;
}

/** The sizes as they can be ordered: of all ways of rounding each to a whole step, the one that misses the aims least. */
export function roundSizes(trial: Trial, { sizes }: Fit): Fit {
  const choices = trial.wanted.map((wanted, index) => steppedOf(sizes[index]!, wanted));
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

/**
 * The same where there are fewer aims than dimensions: the dimension with the coarsest steps is put on one of them, and
 * the others make up for it.
 */
export function* roundFreely(trial: Trial, fit: Fit): Steps<Fit> {
  const coarse = trial.wanted
    .map(({ low, high, step }, index) => ({ index, share: high > low ? step / (high - low) : 0 }))
    .reduce((a, b) => (b.share > a.share ? b : a));
  const options = steppedOf(fit.sizes[coarse.index]!, trial.wanted[coarse.index]!);
  const tries: Fit[] = [];
  for (const size of options) {
    const held = trial.holding(coarse.index, size);
    tries.push(roundSizes(held, yield* fitAims(held, fit.sizes.with(coarse.index, size))));
  }
  return [roundSizes(trial, fit), ...tries].reduce((best, one) => (one.off < best.off ? one : best));
}
