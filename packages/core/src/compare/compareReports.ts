import type { StopSignal } from "../live/refine.ts";
import { takeTurns } from "../live/takeTurns.ts";
import type { BuildChange } from "./BuildChange.ts";
import { compareInSteps, type JudgedBuild } from "./compareInSteps.ts";

/**
 * What changed between two states of a build that were judged by the same rules, as `compareBuilds` says it, while
 * others have their turn.
 * @param signal ends it at the next breath
 * @throws the reason of the signal when it was aborted
 */
export function compareReports(
  before: JudgedBuild,
  after: JudgedBuild,
  signal?: StopSignal,
): Promise<BuildChange> {
  return takeTurns(compareInSteps(before, after), signal);
}
