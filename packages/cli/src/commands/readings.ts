import { writeFile } from "node:fs/promises";
import { type ArgsDef, defineCommand } from "citty";
import { formatProblem } from "trialfit";
import { takeReadings } from "trialfit/papers";
import { ExitCode } from "../ExitCode.ts";
import { readInput } from "../readInput.ts";
import { refuseSurplus } from "../refuseSurplus.ts";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";

const args = {
  build: { type: "positional", required: true, description: "The build file that was measured" },
  sheet: { type: "positional", required: true, description: "The filled measurement sheet, CSV" },
  write: {
    type: "string",
    description: "Write the build with the readings to this file; standard output unless given",
  },
} as const satisfies ArgsDef;

/** `trialfit readings BUILD SHEET` */
export const readings = defineCommand({
  meta: {
    name: "readings",
    description:
      "Take the readings of a filled measurement sheet into a build file; nothing measured is overwritten",
  },
  args,
  run: async ({ args: { _: files, build, sheet, write }, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    refuseSurplus(files, args);
    const { text, taken, known, refused } = takeReadings(
      await readInput(build),
      build,
      await readInput(sheet, "a filled measurement sheet"),
      sheet,
    );
    if (write === undefined) process.stdout.write(text);
    else await writeFile(write, text);
    for (const { label, text: reading, instead } of taken.filter((one) => one.instead !== undefined))
      process.stderr.write(`${label}: ${reading} instead of ${instead}, which is kept\n`);
    process.stderr.write(
      `${taken.length} readings taken, ${known} known before, ${refused.length} refused\n`,
    );
    for (const problem of refused) process.stderr.write(`${formatProblem(problem)}\n`);
    process.exitCode = refused.length > 0 ? ExitCode.stops : ExitCode.sound;
  },
});
