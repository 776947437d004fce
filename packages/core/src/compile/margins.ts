import type { Condition, Ends } from "./closures.ts";
import { SURELY } from "./Outcome.ts";

/**
 * How far a comparison is from turning, at the worst end of the bands: the difference on the good side over the greater
 * of both sides in size, −2 to 2; zero on the limit. −∞ where something is missing.
 */
export type Margin = () => number;

/** @param difference worst difference, positive on the good side */
function relative(difference: number, a: number, b: number, c: number, d: number): number {
  const size = Math.max(Math.abs(a), Math.abs(b), Math.abs(c), Math.abs(d));
  // Both sides are nothing: right on the limit.
  return size === 0 ? 0 : difference / size;
}

/** @param sign 1 where more is better, −1 where less is */
export function marginToNumber(
  { low, high, lack }: Ends,
  slot: number,
  number: number,
  sign: 1 | -1,
): Margin {
  return () => {
    if (lack[slot] !== 0) return -Infinity;
    const [least, most] = [low[slot]!, high[slot]!];
    return relative(sign === 1 ? least - number : number - most, least, most, number, number);
  };
}

/** @param sign 1 where more is better, −1 where less is */
export function marginToSlot(at: Ends, slot: number, other: Ends, against: number, sign: 1 | -1): Margin {
  return () => {
    if (at.lack[slot] !== 0) return -Infinity;
    const [least, most] = [at.low[slot]!, at.high[slot]!];
    const [lowest, highest] = [other.low[against]!, other.high[against]!];
    // A fact on the other side that is missing has no ends; a limit that lacks a case has those of all its cases.
    if (!Number.isFinite(lowest)) return -Infinity;
    return relative(sign === 1 ? least - highest : lowest - most, least, most, lowest, highest);
  };
}

/** Words have no distance: far off on one side or the other. */
export function wordMargin(condition: Condition): Margin {
  return () => ((condition() & SURELY) !== 0 ? Infinity : -Infinity);
}

export function leastOf(margins: readonly Margin[]): Margin {
  return () => margins.reduce((least, margin) => Math.min(least, margin()), Infinity);
}

export function greatestOf(margins: readonly Margin[]): Margin {
  return () => margins.reduce((most, margin) => Math.max(most, margin()), -Infinity);
}
