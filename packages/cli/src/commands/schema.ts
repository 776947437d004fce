import { defineCommand } from "citty";
import { buildJsonSchema } from "trialfit";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";

/** `trialfit schema` */
export const schema = defineCommand({
  meta: { name: "schema", description: "Print the JSON Schema of the build file, for editors" },
  run: ({ rawArgs }) => {
    refuseUnknownOptions(rawArgs, {});
    process.stdout.write(`${JSON.stringify(buildJsonSchema(), null, 2)}\n`);
  },
});
