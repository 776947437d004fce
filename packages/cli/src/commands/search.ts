import { existsSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { type ArgsDef, defineCommand } from "citty";
import {
  DimensionError,
  describeSearch,
  InputError,
  listLimits,
  mergeSearches,
  type SearchOptions,
  type SearchResult,
  type Stage,
  search as searchParts,
  withParts,
} from "trialfit";
import { outputArgs } from "../commonArgs.ts";
import { ExitCode } from "../ExitCode.ts";
import { type Format, render } from "../output.ts";
import { readInput } from "../readInput.ts";
import { readListTexts } from "../readLists.ts";
import { readSets } from "../readSets.ts";
import { readWorkers } from "../readWorkers.ts";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";
import { optionsOf, type SearchTask } from "../search/SearchTask.ts";
import { searchInWorkers } from "../search/searchInWorkers.ts";
import { frontOf, objectiveOf, searchArgs, shardOf } from "../searchArgs.ts";
import { stoppable } from "../stoppable.ts";
import { UsageError } from "../UsageError.ts";
import { valuesOf } from "../valuesOf.ts";
import { wholeOf } from "../wholeOf.ts";

const args = {
  build: {
    type: "positional",
    required: true,
    description: "The build file whose parts are exchanged; with --merge the results of the shards",
  },
  ...searchArgs,
  ...outputArgs,
} as const satisfies ArgsDef;

async function readJson(file: string): Promise<unknown> {
  const text = await readInput(file, "the result of a search", listLimits.characters);
  try {
    return JSON.parse(text) as unknown;
  } catch {
    throw new InputError([
      {
        file,
        line: undefined,
        column: undefined,
        field: "",
        found: "no JSON",
        expected: "the result of a search",
      },
    ]);
  }
}

async function runSearch(
  options: SearchOptions,
  state: string | undefined,
  tells: boolean | undefined,
): Promise<SearchResult> {
  const from = state !== undefined && existsSync(state) ? { from: await readJson(state) } : {};
  const keep = async (result: SearchResult) => {
    if (state !== undefined) await writeFile(state, `${JSON.stringify(result)}\n`);
  };
  const result = await stoppable((more) => searchParts({ ...options, ...from, ...more }), keep, tells);
  if (state !== undefined) await keep(result);
  return result;
}

function runInWorkers(
  task: SearchTask,
  options: SearchOptions,
  workers: number,
  tells: boolean | undefined,
): Promise<SearchResult> {
  const isTold = tells ?? process.stderr.isTTY;
  return searchInWorkers(task, options, workers, (done, of) => {
    if (isTold) process.stderr.write(`searched ${done} of ${of} parts\n`);
  });
}

/** What is wrong with a number or name of an option is a slip of whoever typed it. @throws UsageError */
async function asUsage<T>(run: () => Promise<T>): Promise<T> {
  try {
    return await run();
  } catch (error) {
    if (error instanceof DimensionError)
      throw new UsageError(`found ${error.message}; expected ${error.expected}`);
    if (error instanceof RangeError) throw new UsageError(error.message);
    throw error;
  }
}

/** `trialfit search BUILD --list FILE…` */
export const search = defineCommand({
  meta: {
    name: "search",
    description:
      "Search parts lists for the best combination that goes into a build, and say why others fall out",
  },
  args,
  run: async ({ args: given, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    const { _: files, format, colour } = given;
    const print = (result: SearchResult) => {
      process.stdout.write(render(describeSearch(result), format as Format, colour, result));
      process.exitCode = result.complete && result.reached > 0 ? ExitCode.sound : ExitCode.stops;
    };
    if (given.merge === true) {
      const shards = await Promise.all(files.map(async (file) => ({ file, data: await readJson(file) })));
      return print(mergeSearches(shards));
    }
    const [build = "", ...more] = files;
    const listed = [...valuesOf(rawArgs, "list"), ...more];
    if (listed.length === 0) throw new UsageError("name the parts lists to choose from: --list FILE…");
    const text = await readInput(build);
    const file = build === "-" ? "standard input" : build;
    const sets = await readSets(given.set);
    const shard = shardOf(given.shard);
    const { workers, state, progress } = given;
    if (workers !== undefined && (shard !== undefined || state !== undefined))
      throw new UsageError(
        "--workers cuts the search itself and cannot be gone on with: leave out --shard and --state",
      );
    const task: SearchTask = {
      text,
      file,
      lists: await readListTexts(listed),
      options: {
        objective: objectiveOf(given.objective, given.weights),
        best: wholeOf("best", given.best),
        front: frontOf(given.front),
        demand: given.holds === true || (given.known === true ? ("known" as const) : false),
        inStock: given["in-stock"] === true,
        countAll: given.count === true,
        ...(given.stage === undefined ? {} : { stage: given.stage as Stage }),
        ...(sets === undefined ? {} : { sets }),
        ...(shard === undefined ? {} : { shard }),
      },
    };
    const options = await optionsOf(task);
    const result = await asUsage(() =>
      workers === undefined
        ? runSearch(options, state, progress)
        : runInWorkers(task, options, readWorkers(workers), progress),
    );
    print(result);
    const [best] = result.best;
    if (given.write !== undefined && best !== undefined)
      await writeFile(
        given.write,
        withParts(text, best.parts, options.candidates, { file, unseen: result.unseen }),
      );
  },
});
