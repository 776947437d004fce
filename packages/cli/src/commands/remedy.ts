import { type ArgsDef, defineCommand } from "citty";
import { describeRemedies, findRemedies, RuleError, readBuildText, type Stage } from "trialfit";
import { outputArgs, setArg, stageArg } from "../commonArgs.ts";
import { ExitCode } from "../ExitCode.ts";
import { type Format, render } from "../output.ts";
import { readInput } from "../readInput.ts";
import { readSets } from "../readSets.ts";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";
import { UsageError } from "../UsageError.ts";

const args = {
  build: { type: "positional", required: true, description: "A build file; - for standard input" },
  rule: {
    type: "string",
    description: "Only for the findings of these rules, by their ids, separated by commas",
  },
  stage: stageArg,
  set: setArg,
  ...outputArgs,
} as const satisfies ArgsDef;

/** `trialfit remedy BUILD` */
export const remedy = defineCommand({
  meta: {
    name: "remedy",
    description:
      "For every finding that fails or is open: the smallest change of one dimension that makes it hold and breaks nothing else",
  },
  args,
  run: async ({ args: { build, rule, stage, set, format, colour }, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    const sets = await readSets(set);
    const only = rule?.split(",").map((id) => id.trim());
    const text = await readInput(build);
    const report = await findRemedies(readBuildText(text, build === "-" ? "standard input" : build), {
      ...(only === undefined ? {} : { only }),
      ...(stage === undefined ? {} : { stage: stage as Stage }),
      ...(sets === undefined ? {} : { sets }),
    }).catch((error: unknown) => {
      throw error instanceof RuleError ? new UsageError(error.message) : error;
    });
    process.stdout.write(render(describeRemedies(report), format as Format, colour, report));
    process.exitCode = report.findings.length === 0 ? ExitCode.sound : ExitCode.stops;
  },
});
