import { MET } from "./fitAims.ts";
import type { AimReached } from "./Solved.ts";
import type { Trial } from "./Trial.ts";
import { missOf } from "./Wanted.ts";

/** What each aim comes to at some sizes, and whether it is met by the allowance that it has in this trial. */
export function reachedAt(trial: Trial, sizes: readonly number[]): readonly AimReached[] {
  return trial.reached(sizes).map((value, index) => {
    const aim = trial.aims[index]!;
    return { aim, value, met: value !== undefined && Math.abs(missOf(aim, value)) <= MET };
  });
}
