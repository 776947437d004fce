import { once } from "node:events";
import { createReadStream } from "node:fs";
import { stat } from "node:fs/promises";
import { countOf, InputError } from "trialfit";
import { ExitCode } from "../ExitCode.ts";
import { openPool } from "../openPool.ts";
import { type LineResult, type LineTask, lineJudge } from "./lineJudge.ts";
import { type Line, linesOf } from "./linesOf.ts";

/** Lines that wait for each worker: as many as keep it busy. */
const AHEAD = 4;

interface Judges {
  readonly judge: (line: Line) => Promise<LineResult>;
  /** Lines that may be under way at once. */
  readonly width: number;
  readonly end: () => Promise<void>;
}

async function judgesOf(task: LineTask, workers: number): Promise<Judges> {
  if (workers === 1) return { judge: lineJudge(task), width: 1, end: async () => {} };
  const pool = await openPool(new URL("./lineWorker.js", import.meta.url), workers, task);
  return {
    judge: (line) => pool.run(line) as Promise<LineResult>,
    width: workers * AHEAD,
    end: () => pool.destroy(),
  };
}

async function write(text: string): Promise<void> {
  if (!process.stdout.write(text)) await once(process.stdout, "drain");
}

async function open(file: string): Promise<AsyncIterable<Buffer | string>> {
  if (file === "-") return process.stdin;
  const problem = (found: string) =>
    new InputError([
      {
        file,
        line: undefined,
        column: undefined,
        field: "",
        found,
        expected: "builds, one as JSON in each line",
      },
    ]);
  try {
    if ((await stat(file)).isDirectory()) throw problem("a folder");
  } catch (error) {
    if (error instanceof InputError) throw error;
    const code = (error as NodeJS.ErrnoException).code;
    throw problem(code === "ENOENT" ? "no such file" : `a file that cannot be read (${code})`);
  }
  return createReadStream(file);
}

/**
 * Judges builds that come one as JSON in a line, and prints one report in a line for each, in their order, as soon as
 * it is there; lines that are no builds are reported on the error output and skipped. What is in memory does not grow
 * with the number of lines, and what is printed does not depend on the number of workers.
 * @param file name of a file, or `-` for standard input
 * @param workers whole number from 1; 1: none beside this process
 * @param first number of the first line: of a piece of a longer input it is not 1
 * @returns what the exit code says of all lines
 */
export async function checkStream(
  file: string,
  task: LineTask,
  workers: number,
  first: number,
): Promise<number> {
  const input = await open(file);
  const { judge, width, end } = await judgesOf(task, workers);
  let [under, judged, bad, unsound] = [0, 0, 0, 0];
  let written: Promise<void> = Promise.resolve();
  let failed = false;
  let free = () => {};
  const finish = async (result: LineResult) => {
    if (result.report !== undefined) {
      judged += 1;
      await write(`${result.report}\n`);
    }
    if (result.sound === false) unsound += 1;
    if (result.problems === undefined) return;
    bad += 1;
    process.stderr.write(`${result.problems.join("\n")}\n`);
  };
  try {
    for await (const line of linesOf(input, first)) {
      const result = judge(line);
      under += 1;
      const before = written;
      written = (async () => {
        // Held here at once, so that a failure is not unhandled while those before are written.
        const [, done] = await Promise.all([before, result]);
        await finish(done);
        under -= 1;
        free();
      })();
      written.catch(() => {
        failed = true;
        free();
      });
      if (failed) break;
      if (under >= width)
        await new Promise<void>((resolve) => {
          free = resolve;
        });
    }
    await written;
  } finally {
    await end();
  }
  // Nothing was judged, which must not look like all being sound.
  if (judged + bad === 0) {
    process.stderr.write(`${file}: no line in it; expected builds, one as JSON in each line\n`);
    return ExitCode.badInput;
  }
  if (bad > 0) process.stderr.write(`${countOf(bad, "line")} skipped: no build was read from them.\n`);
  if (bad > 0) return ExitCode.badInput;
  return unsound > 0 ? ExitCode.stops : ExitCode.sound;
}
