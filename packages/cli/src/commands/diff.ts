import { type ArgsDef, defineCommand } from "citty";
import { compareBuilds, describeChange, type Stage } from "trialfit";
import { outputArgs, setArg, stageArg } from "../commonArgs.ts";
import { ExitCode } from "../ExitCode.ts";
import { type Format, render } from "../output.ts";
import { readSets } from "../readSets.ts";
import { readState } from "../readState.ts";
import { refuseSurplus } from "../refuseSurplus.ts";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";

const args = {
  before: {
    type: "positional",
    required: true,
    description: "The older build file or record; - for standard input",
  },
  after: { type: "positional", required: true, description: "The newer build file or record" },
  stage: stageArg,
  set: setArg,
  ...outputArgs,
} as const satisfies ArgsDef;

/** `trialfit diff OLD NEW` */
export const diff = defineCommand({
  meta: {
    name: "diff",
    description: "Compare two states of a build: which values, numbers and verdicts changed, and why",
  },
  args,
  run: async ({ args: { _: files, before, after, stage, set, format, colour }, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    refuseSurplus(files, args);
    const sets = await readSets(set);
    const [old, fresh] = [await readState(before), await readState(after)];
    const change = await compareBuilds(old, fresh, {
      ...(stage === undefined ? {} : { stage: stage as Stage }),
      ...(sets === undefined ? {} : { sets }),
    });
    process.stdout.write(render(describeChange(change), format as Format, colour, change));
    const alike = change.values.length === 0 && change.verdicts.length === 0;
    process.exitCode = alike ? ExitCode.sound : ExitCode.stops;
  },
});
