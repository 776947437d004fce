import { finish } from "../derive/Steps.ts";
import { type EvaluateOptions, evaluate } from "../evaluate.ts";
import { asBuild } from "../read/asBuild.ts";
import type { BuildChange } from "./BuildChange.ts";
import { compareInSteps, type JudgedBuild } from "./compareInSteps.ts";

/**
 * What changed between two states of a build: which values, which quantities that rules ask for with what moved
 * each, and which verdicts.
 * @param before the older state, as for `evaluate`
 * @param after the newer one
 * @throws InputError when one of them is not a build
 */
export async function compareBuilds(
  before: unknown,
  after: unknown,
  options: EvaluateOptions = {},
): Promise<BuildChange> {
  const builds = [asBuild(before), asBuild(after)] as const;
  const judge = async (build: (typeof builds)[0]): Promise<JudgedBuild> => ({
    build,
    report: await evaluate(build, options),
  });
  return finish(compareInSteps(await judge(builds[0]), await judge(builds[1])));
}
