import { type RuleFile, ruleFiles } from "@trialfit/rules";
import { type ArgsDef, defineCommand } from "citty";
import {
  describeTrial,
  describeTrials,
  InputError,
  readBuildText,
  readRuleFile,
  type TrialVerdict,
  tryRule as tryOn,
} from "trialfit";
import { outputArgs } from "../../commonArgs.ts";
import { ExitCode } from "../../ExitCode.ts";
import { findRules } from "../../findRules.ts";
import { type Format, render } from "../../output.ts";
import { readDemos } from "../../readDemos.ts";
import { readInput } from "../../readInput.ts";
import { refuseSurplus } from "../../refuseSurplus.ts";
import { refuseUnknownOptions } from "../../refuseUnknownOptions.ts";

const args = {
  file: { type: "positional", required: true, description: "Rule file" },
  build: {
    type: "positional",
    required: false,
    description: "Build file; - for standard input; none: every demo build, beside what the catalog says",
  },
  ...outputArgs,
} as const satisfies ArgsDef;

/** What a rule file, and the rule of the catalog with its id, say of every demo build. */
async function tryOnDemos(file: RuleFile): Promise<readonly TrialVerdict[]> {
  const known = ruleFiles.find(({ id }) => id === file.id);
  const trials: TrialVerdict[] = [];
  for (const { name, text } of await readDemos()) {
    const build = readBuildText(text, name);
    const { verdict } = await tryOn(build, file);
    const before = known === undefined ? undefined : await tryOn(build, known);
    trials.push({ build: name, verdict: verdict.verdict, inCatalog: before?.verdict.verdict });
  }
  return trials;
}

/** `trialfit rule try FILE [BUILD]` */
export const tryRule = defineCommand({
  meta: {
    name: "try",
    description: "Judge one rule file on a build: verdict, numbers, trace, remedy, what it needs",
  },
  args,
  run: async ({ args: { _: files, file: path, build: buildPath, format, colour }, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    refuseSurplus(files, args);
    const { texts, context } = await findRules([path]);
    const { file, problems } = readRuleFile(texts[0]!.text, path, context);
    if (file === undefined) throw new InputError(problems);
    if (buildPath === undefined) {
      const trials = await tryOnDemos(file);
      process.stdout.write(render(describeTrials(file, trials), format as Format, colour, trials));
      return;
    }
    const build = readBuildText(await readInput(buildPath), buildPath === "-" ? "standard input" : buildPath);
    const trial = await tryOn(build, file);
    const { verdict, remedy } = trial;
    process.stdout.write(
      render(describeTrial(file, trial.build, verdict, remedy), format as Format, colour, trial),
    );
    process.exitCode = ["holds", "not-applicable"].includes(verdict.verdict)
      ? ExitCode.sound
      : ExitCode.stops;
  },
});
