import { type ArgsDef, defineCommand } from "citty";
import {
  type Drawing,
  describeReport,
  evaluate,
  InputError,
  type Problem,
  type Report,
  readBuildText,
  type Stage,
} from "trialfit";
import { outputArgs, setArg, stageArg } from "../commonArgs.ts";
import { ExitCode } from "../ExitCode.ts";
import { type Format, render } from "../output.ts";
import { printProblems } from "../printProblems.ts";
import { drawArgs, readDrawing } from "../readDrawing.ts";
import { readInput } from "../readInput.ts";
import { readSets } from "../readSets.ts";
import { readWorkers } from "../readWorkers.ts";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";
import { checkStream } from "../stream/checkStream.ts";
import { UsageError } from "../UsageError.ts";
import { wholeOf } from "../wholeOf.ts";

type Sets = Awaited<ReturnType<typeof readSets>>;

const args = {
  file: {
    type: "positional",
    required: false,
    description: "Build files (YAML or JSON); - for standard input",
  },
  stage: stageArg,
  set: setArg,
  brief: { type: "boolean", description: "Only what must be done, without reasons and without what holds" },
  stream: {
    type: "boolean",
    description:
      "One build as JSON in each line of one file, or of standard input; one report as JSON in each line",
  },
  workers: { type: "string", description: "With --stream: threads to judge lines in; 1 unless given" },
  "first-line": {
    type: "string",
    description: "With --stream: number of the first line, for a piece of a longer file; 1 unless given",
  },
  ...drawArgs,
  ...outputArgs,
} as const satisfies ArgsDef;

/**
 * @param whole whether the report carries every quantity, not only those that the rules ask for
 * @param statistics engines to draw, if any
 */
async function checkOne(
  file: string,
  stage: Stage | undefined,
  whole: boolean,
  statistics: Drawing | undefined,
  sets: Sets,
): Promise<Report | readonly Problem[]> {
  try {
    const build = readBuildText(await readInput(file), file === "-" ? "standard input" : file);
    return await evaluate(build, {
      ...(stage === undefined ? {} : { stage }),
      ...(sets === undefined ? {} : { sets }),
      ...(statistics === undefined ? {} : { statistics }),
      ...(whole ? { quantities: "all" as const } : {}),
    });
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
}

/** One report as it is, several as a list; with problems one object that holds both. */
function asData(reports: readonly Report[], problems: readonly Problem[]): unknown {
  if (problems.length > 0) return { format: "trialfit-problems", formatVersion: 1, problems, reports };
  return reports.length === 1 ? reports[0] : reports;
}

/** `trialfit check FILE…` */
export const check = defineCommand({
  meta: {
    name: "check",
    description: "Check builds: what holds, what fails, what must be measured, what is missing",
  },
  args,
  run: async ({ args: given, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    const { _: files, stage, set, brief, stream, workers, draw, seed, format, colour } = given;
    if (files.length === 0 && process.stdin.isTTY)
      throw new UsageError("name a build file, or - to read standard input");
    const drawing = readDrawing(draw, seed);
    const sets = await readSets(set);
    if (workers !== undefined && stream !== true)
      throw new UsageError("--workers goes with --stream: of single files each is judged by itself");
    const firstLine = given["first-line"];
    if (firstLine !== undefined && stream !== true) throw new UsageError("--first-line goes with --stream");
    if (stream === true) {
      if (files.length > 1) throw new UsageError("--stream reads one file, or - for standard input");
      const [file = "-"] = files;
      const task = {
        file: file === "-" ? "standard input" : file,
        brief: brief === true,
        ...(stage === undefined ? {} : { stage: stage as Stage }),
        ...(sets === undefined ? {} : { sets }),
        ...(drawing === undefined ? {} : { statistics: drawing }),
      };
      process.exitCode = await checkStream(
        file,
        task,
        readWorkers(workers),
        firstLine === undefined ? 1 : wholeOf("first-line", firstLine, 1),
      );
      return;
    }
    const results = await Promise.all(
      (files.length === 0 ? ["-"] : files).map((file) =>
        checkOne(file, stage as Stage | undefined, format === "json", drawing, sets),
      ),
    );
    const reports = results.filter((one): one is Report => "summary" in one);
    const problems = results.flatMap((one) => ("summary" in one ? [] : one));
    if (format === "json") {
      process.stdout.write(`${JSON.stringify(asData(reports, problems), null, 2)}\n`);
    } else {
      process.stdout.write(
        reports
          .map((report) =>
            render(
              describeReport(report, brief === true ? "brief" : "full"),
              format as Format,
              colour,
              report,
            ),
          )
          .join("\n"),
      );
    }
    printProblems(problems);
    if (problems.length > 0) process.exitCode = ExitCode.badInput;
    else process.exitCode = reports.every((report) => report.summary.sound) ? ExitCode.sound : ExitCode.stops;
  },
});
