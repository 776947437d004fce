import type { Build } from "trialfit";

export { demoBuilds } from "./generateBuilds.ts";

import { demoBuilds, generateBuild } from "./generateBuilds.ts";

/** Builds that are drawn beside the demo builds. */
export const DRAWN = 1000;
const SEED = 20_261_129;

/** The demo builds and those that are drawn from them, each made when it is asked for. */
export function* seenBuilds(drawn = DRAWN): Generator<Build> {
  yield* demoBuilds;
  for (let number = 0; number < drawn; number += 1) yield generateBuild(SEED, number);
}
