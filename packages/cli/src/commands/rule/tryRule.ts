import { type ArgsDef, defineCommand } from "citty";
import { describeTrial, InputError, readBuildText, readRuleFile, tryRule as tryOn } from "trialfit";
import { outputArgs } from "../../commonArgs.ts";
import { ExitCode } from "../../ExitCode.ts";
import { findRules } from "../../findRules.ts";
import { type Format, render } from "../../output.ts";
import { readInput } from "../../readInput.ts";
import { refuseUnknownOptions } from "../../refuseUnknownOptions.ts";

const args = {
  file: { type: "positional", required: true, description: "Rule file" },
  build: { type: "positional", required: true, description: "Build file; - for standard input" },
  ...outputArgs,
} as const satisfies ArgsDef;

/** `trialfit rule try FILE BUILD` */
export const tryRule = defineCommand({
  meta: {
    name: "try",
    description: "Judge one rule file on a build: verdict, numbers, trace, remedy, what it needs",
  },
  args,
  run: async ({ args: { file: path, build: buildPath, format, colour }, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    const { texts, context } = await findRules([path]);
    const { file, problems } = readRuleFile(texts[0]!.text, path, context);
    if (file === undefined) throw new InputError(problems);
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
