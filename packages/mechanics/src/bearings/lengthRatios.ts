import type { Interval } from "../check/requireAll.ts";

/** Length over diameter for which the film of a finite bearing is computed. */
export const lengthRatios = { atLeast: 0.1, atMost: 2 } as const satisfies Interval;
