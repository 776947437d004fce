import { heaviestFirst } from "./Consequences.ts";
import type { Broken, NoRemedy, Remedy, Worsened } from "./Remedy.ts";
import { type WorkKind, works } from "./works.ts";

const rank = Object.keys(works) as readonly WorkKind[];

/** What a change makes worse by more than next to nothing. */
export const plainlyWorse = (worsens: readonly Worsened[]): readonly Worsened[] =>
  worsens.filter(({ slight }) => !slight);

/** How heavy the heaviest of what a change harms is: 0 where it harms nothing, most where it is a stop rule. */
function harm(harmed: readonly (Broken | Worsened)[]): number {
  return Math.max(0, ...harmed.map(({ weight }) => heaviestFirst.length - heaviestFirst.indexOf(weight)));
}

/**
 * Changes in the order in which a builder would think of them: first what makes nothing worse that fails already, then
 * the cheapest kind of work, then the fewest steps.
 */
export function rankRemedies(remedies: readonly Remedy[]): readonly Remedy[] {
  return [...remedies].sort(
    (a, b) =>
      harm(plainlyWorse(a.worsens)) - harm(plainlyWorse(b.worsens)) ||
      harm(a.brings) - harm(b.brings) ||
      rank.indexOf(a.work) - rank.indexOf(b.work) ||
      a.steps - b.steps ||
      (a.path < b.path ? -1 : 1),
  );
}

const REASONS: readonly NoRemedy["why"][] = ["breaks", "too-loose", "unknown", "out-of-reach"];
const harmed = ({ breaks = [], worsens = [] }: NoRemedy) => [...breaks, ...plainlyWorse(worsens)];
/** Where the size stays as it is, nothing is done to the part. */
const workOf = ({ nearest }: NoRemedy): number => (nearest === undefined ? -1 : rank.indexOf(nearest.work));

/** What does not do, the reason that comes nearest to doing first, then what breaks least, then as remedies are. */
export function rankOthers(others: readonly NoRemedy[]): readonly NoRemedy[] {
  return [...others].sort(
    (a, b) =>
      REASONS.indexOf(a.why) - REASONS.indexOf(b.why) ||
      harm(harmed(a)) - harm(harmed(b)) ||
      workOf(a) - workOf(b) ||
      (a.nearest?.steps ?? 0) - (b.nearest?.steps ?? 0) ||
      (a.path < b.path ? -1 : 1),
  );
}
