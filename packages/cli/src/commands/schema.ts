import { defineCommand } from "citty";
import { buildJsonSchema } from "trialfit";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";
import { UsageError } from "../UsageError.ts";

/** `trialfit schema` */
export const schema = defineCommand({
  meta: { name: "schema", description: "Print the JSON Schema of the build file, for editors" },
  run: ({ rawArgs }) => {
    refuseUnknownOptions(rawArgs, {});
    if (rawArgs.length > 0) throw new UsageError(`schema takes no "${rawArgs[0]}"`);
    process.stdout.write(`${JSON.stringify(buildJsonSchema(), null, 2)}\n`);
  },
});
