import type { Stage } from "trialfit";

/** What happens in each stage of a build, in one line. */
export const stageWords: Readonly<Record<Stage, string>> = {
  choose: "Parts are data sheets. Find what cannot go together while nothing is paid for.",
  machine: "Metal is about to come off. Know how much, where, and what it leaves.",
  "trial-assembly": "Parts are on the bench. Replace what was assumed by what was measured.",
  "final-assembly": "Clearances, preloads and gaps are set for good, in order.",
  run: "The engine turns under its own power, inside the limits it was planned for.",
};
