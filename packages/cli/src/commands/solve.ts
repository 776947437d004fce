import { writeFile } from "node:fs/promises";
import { type ArgsDef, defineCommand } from "citty";
import { describeSolution, editBuildText, readBuildText, type Stage, solve as solveBuild } from "trialfit";
import { outputArgs, setArg, stageArg } from "../commonArgs.ts";
import { ExitCode } from "../ExitCode.ts";
import { type Format, render } from "../output.ts";
import { readInput } from "../readInput.ts";
import { readSets } from "../readSets.ts";
import { refuseSurplus } from "../refuseSurplus.ts";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";

const args = {
  build: {
    type: "positional",
    required: true,
    description: 'A build file with dimensions written as "?" and aims; - for standard input',
  },
  write: { type: "string", description: "Write the build with the sizes found to this file" },
  full: {
    type: "boolean",
    description: "Also the rules that are unknown or to be confirmed, and the values taken by default",
  },
  stage: stageArg,
  set: setArg,
  ...outputArgs,
} as const satisfies ArgsDef;

/** `trialfit solve BUILD` */
export const solve = defineCommand({
  meta: {
    name: "solve",
    description:
      "Find the dimensions that a build leaves open, so that its aims are met, and judge it with them",
  },
  args,
  run: async ({ args: { _: files, build, write, full, stage, set, format, colour }, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    refuseSurplus(files, args);
    const sets = await readSets(set);
    const file = build === "-" ? "standard input" : build;
    const text = await readInput(build);
    const solution = await solveBuild(readBuildText(text, file), {
      ...(stage === undefined ? {} : { stage: stage as Stage }),
      ...(sets === undefined ? {} : { sets }),
    });
    process.stdout.write(
      render(describeSolution(solution, { full: full === true }), format as Format, colour, solution),
    );
    if (solution.state === "solved" && write !== undefined) {
      const edits = solution.fields.map(({ path, text: value }) => ({ path, value }));
      await writeFile(write, editBuildText(text, edits, file));
    }
    process.exitCode =
      solution.state === "solved" && solution.report.summary.sound ? ExitCode.sound : ExitCode.stops;
  },
});
