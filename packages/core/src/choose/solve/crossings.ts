import type { Fit } from "./fitAims.ts";
import type { Trial } from "./Trial.ts";

/** Sizes of one dimension that are looked at, over its range. */
const STOPS = 48;
const HALVINGS = 44;
/** An aim is met on the way when it is off by no more than this share of its allowance. */
const ON_WAY = 1e-3;

/** A fit of all aims but one, with one dimension held, and how far that one is off. */
interface Stop {
  readonly fit: Fit;
  readonly miss: number;
}

/**
 * Places where an aim crosses what is wanted while one dimension is carried along its range and the others keep meeting
 * the other aims. It finds what lies in a narrow stretch between bends, where every descent from elsewhere is led away.
 * Tried where there are as many aims to be met exactly as dimensions; there is nothing to cross otherwise.
 * @param fit meets the aims of a trial from sizes nearby
 * @returns the places as they are found; undefined now and then between them, so that others can have a turn
 */
export function* crossings(
  trial: Trial,
  fit: (trial: Trial, near: readonly number[]) => Fit,
): Generator<readonly number[] | undefined, void, void> {
  const { wanted, aims } = trial;
  if (aims.length !== wanted.length || aims.some(({ kind }) => kind !== "equal")) return;
  for (const [index, { low, high }] of wanted.entries())
    for (const [left, { id }] of aims.entries()) {
      const others = trial.without(new Set([id]));
      const stopAt = (size: number, near: readonly number[]): Stop => {
        const held = others.holding(index, size);
        const from = near.with(index, size);
        const there = aims.length === 1 ? { sizes: from, off: 0 } : fit(held, from);
        return { fit: there, miss: trial.misses(there.sizes)[left]! };
      };
      let before: Stop | undefined;
      let near = trial.sizesAt(wanted.map(() => 0.5));
      for (let stop = 0; stop <= STOPS; stop += 1) {
        yield undefined;
        const now = stopAt(low + (stop / STOPS) * (high - low), near);
        if (now.fit.off > ON_WAY) {
          before = undefined;
          continue;
        }
        near = now.fit.sizes;
        if (before !== undefined && before.miss * now.miss <= 0)
          yield closeIn(before, now, index, stopAt).fit.sizes;
        before = now;
      }
    }
}

/** Halves the stretch in which an aim crosses what is wanted. */
function closeIn(
  from: Stop,
  to: Stop,
  index: number,
  stopAt: (size: number, near: readonly number[]) => Stop,
): Stop {
  let [low, high] = [from, to];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = stopAt((low.fit.sizes[index]! + high.fit.sizes[index]!) / 2, low.fit.sizes);
    if (middle.fit.off > ON_WAY) break;
    if (middle.miss * low.miss <= 0) high = middle;
    else low = middle;
  }
  return Math.abs(low.miss) < Math.abs(high.miss) ? low : high;
}
