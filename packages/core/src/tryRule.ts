import type { RuleFile } from "@trialfit/rules";
import { quantities } from "./derive/generated/quantities.ts";
import { finish } from "./derive/Steps.ts";
import { withDefaults } from "./derive/withDefaults.ts";
import { compileRules } from "./judge/compileRules.ts";
import { withSettlement } from "./judge/howToSettle.ts";
import { judgeBuild } from "./judge/judgeBuild.ts";
import type { Build } from "./read/Build.ts";
import type { ReportVerdict } from "./report/Report.ts";
import { remedyOf, reportVerdict } from "./report/reportVerdict.ts";

/** What one rule says of one build. */
export interface Trial {
  readonly build: string;
  readonly verdict: ReportVerdict;
  /** What it would tell the builder to do, with this build's numbers, whatever the verdict. */
  readonly remedy: string;
}

/**
 * Judges one rule on a build, for its author.
 * @throws RuleError when the rule cannot be used
 */
export async function tryRule(build: Build, file: RuleFile): Promise<Trial> {
  const { judged } = await judgeBuild(withDefaults(build), compileRules([file]), quantities, []);
  const settled = finish(withSettlement(judged[0]!, quantities));
  return {
    build: build.name,
    verdict: reportVerdict(settled, build.confirmations),
    remedy: remedyOf(settled),
  };
}
