import type { Wanted } from "./Wanted.ts";

type Stepped = Pick<Wanted, "low" | "high" | "step" | "origin">;

/** Share of a step within which a size stands on it. */
const SLACK = 1e-9;
/** The same of a size that was found by descents. */
const NEAR = 1e-6;
/** Digits beyond which a size is noise of the arithmetic. */
const DIGITS = 12;

/** First and last step inside the bounds, counted from where the steps begin; the last is below the first where there is none. */
export function stepsInside({ low, high, step, origin = 0 }: Stepped): readonly [number, number] {
  const slack = SLACK + 1e-12 * (Math.abs(origin) / step);
  return [Math.ceil((low - origin) / step - slack), Math.floor((high - origin) / step + slack)];
}

/** Whether a size inside the bounds can be ordered at all. */
export function hasSteps(wanted: Stepped): boolean {
  const [first, last] = stepsInside(wanted);
  return first <= last;
}

/** The size at a step [SI]. */
export function sizeAt(count: number, { step, origin = 0 }: Stepped): number {
  return Number((origin + count * step).toPrecision(DIGITS));
}

/**
 * The steps just below and above a size that lie inside the bounds [SI]; none where no step does.
 * @param reach how many below and above
 */
export function stepsNear(size: number, wanted: Stepped, reach = 1): readonly number[] {
  const [first, last] = stepsInside(wanted);
  if (first > last) return [];
  const below = Math.floor((size - (wanted.origin ?? 0)) / wanted.step + NEAR);
  const counts = Array.from({ length: 2 * reach }, (_, index) => below + 1 - reach + index);
  const inside = counts.map((count) => Math.min(last, Math.max(first, count)));
  return [...new Set(inside)].map((count) => sizeAt(count, wanted));
}
