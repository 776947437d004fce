import { existsSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { type ArgsDef, defineCommand } from "citty";
import {
  DimensionError,
  describeSearch,
  InputError,
  listLimits,
  mergeSearches,
  readBuildText,
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
import { readLists } from "../readLists.ts";
import { readSets } from "../readSets.ts";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";
import { frontOf, objectiveOf, searchArgs, shardOf, wholeOf } from "../searchArgs.ts";
import { stoppable } from "../stoppable.ts";
import { UsageError } from "../UsageError.ts";
import { valuesOf } from "../valuesOf.ts";

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
  try {
    const result = await stoppable((more) => searchParts({ ...options, ...from, ...more }), keep, tells);
    if (state !== undefined) await keep(result);
    return result;
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
      const found = result.best.length + (result.front?.length ?? 0);
      process.exitCode = result.complete && found > 0 ? ExitCode.sound : ExitCode.stops;
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
    const lists = await readLists(listed);
    const sets = await readSets(given.set);
    const shard = shardOf(given.shard);
    const result = await runSearch(
      {
        fixed: readBuildText(text, file),
        candidates: lists,
        objective: objectiveOf(given.objective, given.weights),
        best: wholeOf("best", given.best),
        front: frontOf(given.front),
        demand: given.holds === true,
        inStock: given["in-stock"] === true,
        countAll: given.count === true,
        ...(given.stage === undefined ? {} : { stage: given.stage as Stage }),
        ...(sets === undefined ? {} : { sets }),
        ...(shard === undefined ? {} : { shard }),
      },
      given.state,
      given.progress,
    );
    print(result);
    const [best] = result.best;
    if (given.write !== undefined && best !== undefined)
      await writeFile(given.write, withParts(text, best.parts, lists, { file, unseen: result.unseen }));
  },
});
