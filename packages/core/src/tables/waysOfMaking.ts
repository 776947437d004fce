import type { ToleranceGrade } from "./toleranceGrades.ts";

/** How a dimension was made, and the tolerance grade that this way keeps when nothing else is said. */
export interface WayOfMaking {
  readonly grade: ToleranceGrade;
  readonly help: string;
}

/**
 * Ways of making a dimension. The grade is the coarse end of what shops usually keep: from memory, not a promise
 * of any maker. A stated tolerance outranks it.
 */
export const waysOfMaking = {
  lapped: { grade: 5, help: "lapped or superfinished" },
  honed: { grade: 6, help: "honed to size" },
  ground: { grade: 6, help: "ground to size" },
  reamed: { grade: 8, help: "reamed" },
  bored: { grade: 8, help: "bored" },
  turned: { grade: 9, help: "turned" },
  milled: { grade: 10, help: "milled or decked" },
  drilled: { grade: 12, help: "drilled" },
  forged: { grade: 14, help: "as forged" },
  cast: { grade: 14, help: "as cast" },
} as const satisfies Readonly<Record<string, WayOfMaking>>;

export type WayOfMakingId = keyof typeof waysOfMaking;
export const wayOfMakingIds = Object.keys(waysOfMaking) as [WayOfMakingId, ...WayOfMakingId[]];
