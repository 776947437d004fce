import { type Ends, refineAlong } from "./refineAlong.ts";
import type { Steps } from "./Steps.ts";

const MAX_SWEEPS = 6;
/** Candidates of an input that is not searched inside. */
const ENDS_AND_NOMINAL = 3;
/** Gain over the whole spread below which another sweep is not worth its cost. */
const SETTLED = 1e-4;

/** A value, and the point at which it was met. */
export interface Found {
  readonly value: number;
  readonly point: readonly number[];
}

/**
 * Moves one input at a time to where it raises the value most, until none does; an input that comes to stand inside of
 * its tolerance is followed on between its candidates. Stops after each input.
 * @param at the value, to be raised
 * @param start the point to begin from
 * @param candidates what is tried of each input
 * @param spread of the value over all tolerances, by which a gain is small
 */
export function* climb(
  at: (point: readonly number[]) => number,
  start: readonly number[],
  candidates: readonly (readonly number[])[],
  spread: number,
): Steps<Found> {
  const point = [...start];
  let best = at(point);
  for (let sweep = 0; sweep < MAX_SWEEPS; sweep += 1) {
    const before = best;
    for (const [index, values] of candidates.entries()) {
      const kept = point[index]!;
      let choice = kept;
      for (const value of values) {
        if (value === choice) continue;
        point[index] = value;
        const result = at(point);
        if (result > best) {
          best = result;
          choice = value;
        }
      }
      const ends: Ends = [Math.min(...values), Math.max(...values)];
      if (values.length > ENDS_AND_NOMINAL && choice > ends[0] && choice < ends[1]) {
        const valueAt = (value: number) => {
          point[index] = value;
          return at(point);
        };
        choice = refineAlong(valueAt, choice, best, ends);
        best = valueAt(choice);
      }
      point[index] = choice;
      yield;
    }
    if (best - before <= SETTLED * spread) break;
  }
  return { value: best, point };
}
