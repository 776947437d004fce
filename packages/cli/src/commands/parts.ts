import { type ArgsDef, defineCommand } from "citty";
import { describeLists } from "trialfit";
import { outputArgs } from "../commonArgs.ts";
import { ExitCode } from "../ExitCode.ts";
import { type Format, render } from "../output.ts";
import { readLists } from "../readLists.ts";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";
import { UsageError } from "../UsageError.ts";

const args = {
  file: { type: "positional", required: false, description: "Parts lists (CSV, YAML or JSON)" },
  ...outputArgs,
} as const satisfies ArgsDef;

/** `trialfit parts FILE…` */
export const parts = defineCommand({
  meta: { name: "parts", description: "Check parts lists: what is wrong, cell by cell, or what is in them" },
  args,
  run: async ({ args: { _: files, format, colour }, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    if (files.length === 0) throw new UsageError("name a parts list");
    const lists = await readLists(files);
    const data = lists.map(({ part, parts: listed, ...list }) => ({
      ...list,
      part: part.key,
      parts: listed.map(({ values: _, ...one }) => one),
    }));
    process.stdout.write(render(describeLists(lists), format as Format, colour, data));
    process.exitCode = ExitCode.sound;
  },
});
