import type { Steps } from "../../derive/Steps.ts";
import { fitAims, MET } from "./fitAims.ts";
import type { Trial } from "./Trial.ts";
import type { Aim } from "./Wanted.ts";

/**
 * The fewest aims that already cannot be met together: none of them could be left out. Aims are left out one after the
 * other; where the rest still cannot be met, the one that was left out is not to blame.
 */
export function* findConflict(trial: Trial): Steps<readonly Aim[]> {
  const left = new Set<string>();
  for (const { id } of trial.aims) {
    left.add(id);
    const rest = trial.without(left);
    if (rest.aims.length === 0 || (yield* fitAims(rest)).off <= MET) left.delete(id);
  }
  return trial.without(left).aims;
}
