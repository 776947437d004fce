import type { Trial } from "./Trial.ts";

/**
 * The same aims, of which less is asked.
 * @param levels by aim how far off counts as not off at all, in its allowances, beside what does already
 */
export function easeAims(trial: Trial, levels: readonly number[]): Trial {
  return trial.withAims(
    trial.aims.map((aim, index) => ({ ...aim, slack: (aim.slack ?? 0) + levels[index]! * aim.allowance })),
  );
}
