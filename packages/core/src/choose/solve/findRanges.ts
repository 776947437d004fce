import { fitClose, MET } from "./fitAims.ts";
import { roundSizes } from "./roundSizes.ts";
import { sizeAt, stepsInside } from "./steps.ts";
import type { Trial } from "./Trial.ts";

/** From where to where one wanted dimension may lie [SI], on its steps. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/** Whether the aims can be met, on steps, with one dimension at a size and the others chosen to suit. */
function suits(trial: Trial, index: number, size: number, near: readonly number[]): boolean {
  const held = trial.holding(index, size);
  const middle = held.sizesAt(held.wanted.map(() => 0.5));
  return [near.with(index, size), middle].some((place) => {
    const fit = fitClose(held, place);
    return fit.off <= MET && roundSizes(held, fit).off <= MET;
  });
}

/** The farthest step to which a dimension can go without a gap, by halves of the way from where it suits. */
function farthest(from: number, to: number, isFit: (count: number) => boolean): number {
  if (isFit(to)) return to;
  let [good, bad] = [from, to];
  while (Math.abs(bad - good) > 1) {
    const middle = Math.round((good + bad) / 2);
    if (isFit(middle)) good = middle;
    else bad = middle;
  }
  return good;
}

/**
 * The range of each wanted dimension in which all aims, bounds all of them, can be met.
 * @param sizes where they are met, on steps [SI]
 */
export function findRanges(trial: Trial, sizes: readonly number[]): readonly Range[] {
  return trial.wanted.map((wanted, index) => {
    const [first, last] = stepsInside(wanted);
    const here = Math.round((sizes[index]! - (wanted.origin ?? 0)) / wanted.step);
    const isFit = (count: number) => suits(trial, index, sizeAt(count, wanted), sizes);
    return {
      low: sizeAt(farthest(here, first, isFit), wanted),
      high: sizeAt(farthest(here, last, isFit), wanted),
    };
  });
}
