import type { Steps } from "../../derive/Steps.ts";

/** What is asked of the rungs of a ladder, from 1 to `count`; rung 0 is the build as it is. */
export interface Rungs {
  readonly count: number;
  /**
   * How far the finding is from holding at a rung, by a short way: negative where it does not hold, not negative where
   * it seems to.
   */
  readonly lean: (rung: number) => number;
  /** The same over the whole band. */
  readonly closely: (rung: number) => Steps<number>;
  /** Whether it surely holds there; false at rung 0. */
  readonly holds: (rung: number) => Steps<boolean>;
}

/** The first rung between one that does not and one that does. */
export function* firstBetween(
  bad: number,
  good: number,
  does: (rung: number) => Steps<boolean>,
): Steps<number> {
  let [low, high] = [bad, good];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (yield* does(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** A rung inside of a bracket, in which something rises and then falls, where it leans most, or enough. */
export function* peakBetween(from: number, to: number, lean: Rungs["closely"]): Steps<number> {
  let [low, high] = [from, to];
  while (high - low > 3) {
    const third = Math.floor((high - low) / 3);
    const [left, right] = [low + third, high - third];
    const there = yield* lean(left);
    if (there >= 0) return left;
    if (there < (yield* lean(right))) low = left;
    else high = right;
  }
  let best = low;
  for (let rung = low + 1; rung <= high; rung += 1)
    if ((yield* lean(rung)) > (yield* lean(best))) best = rung;
  return best;
}

/** From where it surely holds inwards in doubling steps, then by halving. */
function* inwards(from: number, { holds }: Rungs): Steps<number> {
  let good = from;
  for (let step = 1; ; step *= 2) {
    const inner = Math.max(0, from - step);
    if (inner === 0 || !(yield* holds(inner))) return yield* firstBetween(inner, good, holds);
    good = inner;
  }
}

/** From where it seems to begin to hold to where it surely does. */
function* settle(from: number, rungs: Rungs): Steps<number | undefined> {
  const { count, closely, holds } = rungs;
  if (yield* holds(from)) return yield* inwards(from, rungs);
  let [before, bad] = [from, from];
  for (let step = 1; bad < count; step *= 2) {
    const outer = Math.min(count, from + step);
    if (yield* holds(outer)) return yield* firstBetween(bad, outer, holds);
    if ((yield* closely(outer)) < (yield* closely(bad))) {
      const peak = yield* peakBetween(before, outer, closely);
      return (yield* holds(peak)) ? yield* firstBetween(before, peak, holds) : undefined;
    }
    [before, bad] = [bad, outer];
  }
  return undefined;
}

/** Rungs in doubling distances, to the last one. */
function* doubling(count: number): Generator<number, void, void> {
  for (let rung = 1; rung < count; rung *= 2) yield rung;
  if (count > 0) yield count;
}

/** Whether something rose to a place and falls from it. */
const isPeak = (before: number, at: number, after: number): boolean =>
  at >= before && at >= after && (at > before || at > after);

/** What was found on a ladder. */
export interface Nearest {
  /** The nearest rung at which it surely holds; absent where none was found as far as the ladder goes. */
  readonly rung?: number;
  /** Of the rungs that were looked at the one that leans most; 0 where none is better than the build as it is. */
  readonly best: number;
}

/**
 * The nearest rung at which a finding surely holds. It is looked at in doubling distances, and, where it comes near and
 * goes away again, in between; of what is found, one step less is known not to do.
 */
export function* findNearest(rungs: Rungs): Steps<Nearest> {
  const known = new Map<number, number>();
  const lean = (rung: number): number => {
    let value = known.get(rung);
    if (value === undefined) {
      value = rungs.lean(rung);
      known.set(rung, value);
    }
    return value;
  };
  const shortly = function* (rung: number): Steps<number> {
    yield;
    return lean(rung);
  };
  const seems = function* (rung: number): Steps<boolean> {
    return (yield* shortly(rung)) >= 0;
  };
  const settleInside = function* (from: number, to: number): Steps<number | undefined> {
    const peak = yield* peakBetween(from, to, shortly);
    return lean(peak) < 0 ? undefined : yield* settle(yield* firstBetween(from, peak, seems), rungs);
  };
  let [before, last]: [number | undefined, number] = [undefined, 0];
  for (const rung of doubling(rungs.count)) {
    let found: number | undefined;
    if (lean(rung) >= 0) {
      if (lean(last) < 0) found = yield* settle(yield* firstBetween(last, rung, seems), rungs);
      else if (yield* rungs.holds(rung)) found = yield* firstBetween(last, rung, rungs.holds);
    } else if (before !== undefined && lean(last) < 0 && isPeak(lean(before), lean(last), lean(rung)))
      found = yield* settleInside(before, rung);
    else if (rung === rungs.count && lean(rung) > lean(last)) found = yield* settleInside(last, rung);
    if (found !== undefined) return { rung: found, best: found };
    [before, last] = [last, rung];
    yield;
  }
  return { best: [...known.keys()].reduce((best, rung) => (lean(rung) > lean(best) ? rung : best), 0) };
}
