import { writeFile } from "node:fs/promises";
import { type ArgsDef, defineCommand } from "citty";
import {
  compareBuilds,
  describeChange,
  describeRemedies,
  editBuildText,
  findRemedies,
  RuleError,
  readBuildText,
  type Stage,
} from "trialfit";
import { outputArgs, setArg, stageArg } from "../commonArgs.ts";
import { ExitCode } from "../ExitCode.ts";
import { type Format, render } from "../output.ts";
import { readInput } from "../readInput.ts";
import { readSets } from "../readSets.ts";
import { refuseSurplus } from "../refuseSurplus.ts";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";
import { takeRemedy } from "../takeRemedy.ts";
import { UsageError } from "../UsageError.ts";

const args = {
  build: { type: "positional", required: true, description: "A build file; - for standard input" },
  rule: {
    type: "string",
    description: "Only for the findings of these rules, by their ids, separated by commas",
  },
  write: {
    type: "string",
    description: "Write the build with the remedy of one finding to this file, and tell what changes by it",
  },
  take: {
    type: "string",
    description: "With --write: the field whose change is taken; without it the first that harms nothing",
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
  run: async ({ args: { _: files, build, rule, write, take, stage, set, format, colour }, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    refuseSurplus(files, args);
    const only = rule?.split(",").map((id) => id.trim());
    if (write !== undefined && only?.length !== 1)
      throw new UsageError("--write takes the remedy of one finding: name its rule with --rule");
    if (take !== undefined && write === undefined)
      throw new UsageError("--take needs --write, the file to write to");
    const sets = await readSets(set);
    const text = await readInput(build);
    const file = build === "-" ? "standard input" : build;
    const before = readBuildText(text, file);
    const how = {
      ...(stage === undefined ? {} : { stage: stage as Stage }),
      ...(sets === undefined ? {} : { sets }),
    };
    const report = await findRemedies(before, { ...(only === undefined ? {} : { only }), ...how }).catch(
      (error: unknown) => {
        throw error instanceof RuleError ? new UsageError(error.message) : error;
      },
    );
    const print = (document: Parameters<typeof render>[0], data: unknown) =>
      process.stdout.write(render(document, format as Format, colour, data));
    const isJson = format === "json";
    process.exitCode = report.findings.length === 0 ? ExitCode.sound : ExitCode.stops;
    if (write === undefined || report.findings.length === 0) {
      print(describeRemedies(report), report);
      return;
    }
    if (!isJson) print(describeRemedies(report), report);
    const taken = takeRemedy(report, take)!;
    const written = editBuildText(text, [{ path: taken.path, value: taken.text }], file);
    const change = await compareBuilds(before, readBuildText(written, write), how);
    await writeFile(write, written);
    print(describeChange(change), { ...report, taken, change });
    const asked = change.verdicts.find((one) => one.rule === report.findings[0]!.rule);
    process.exitCode = asked?.after === "holds" ? ExitCode.sound : ExitCode.stops;
  },
});
