import { allowFinest, allowReached, allowSteps } from "./allowSteps.ts";
import { findConflicts } from "./findConflicts.ts";
import { type Fit, MET } from "./fitAims.ts";
import { freeDirections } from "./freeDirections.ts";
import { nearestSizes, takenForGranted } from "./nearestSizes.ts";
import { reachedAt } from "./reachedAt.ts";
import { roundFreely } from "./roundSizes.ts";
import type { Solved } from "./Solved.ts";
import { hasSteps } from "./steps.ts";
import type { Trial } from "./Trial.ts";

type Unsolved = Extract<Solved, { state: "conflict" }>;

/**
 * Why aims are not met, and how near they can be brought.
 * @param exact nearest that was found with sizes of any fineness
 * @param rounded the same on steps
 */
export function explainUnsolved(trial: Trial, exact: Fit, rounded: Fit): Unsolved {
  const stepless = trial.wanted.flatMap((one, index) => (hasSteps(one) ? [] : [index]));
  if (exact.off <= MET)
    return {
      state: "conflict",
      conflict: trial.aims,
      conflicts: [],
      exact: exact.sizes,
      sizes: rounded.sizes,
      reached: reachedAt(allowFinest(trial, rounded.sizes), rounded.sizes),
      bySteps: true,
      stepless,
    };
  const conflicts = findConflicts(trial);
  const nearest = nearestSizes(trial, exact.sizes);
  const granted = allowFinest(takenForGranted(trial, nearest), nearest.sizes);
  const freedom = freeDirections(granted, nearest.sizes).length;
  const { sizes } = roundFreely(granted, { sizes: nearest.sizes, off: 0 }, freedom);
  const finest = allowFinest(trial, sizes);
  // What has to be off is held to the wanted value; what only rounding puts off, to what rounding costs.
  const lenient = allowReached(finest, sizes).aims;
  const steps = allowSteps(trial, nearest.sizes).aims;
  const judged = trial.withAims(
    finest.aims.map((aim, index) => {
      const isKept = nearest.levels[index]! <= MET && lenient[index]!.allowance <= steps[index]!.allowance;
      return isKept ? lenient[index]! : aim;
    }),
  );
  return {
    state: "conflict",
    conflict: conflicts[0]?.aims ?? trial.aims,
    conflicts,
    exact: nearest.sizes,
    sizes,
    reached: reachedAt(judged, sizes),
    bySteps: false,
    stepless,
  };
}
