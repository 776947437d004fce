import type { ArgsDef } from "citty";
import { nearestWord } from "trialfit";
import { UsageError } from "./UsageError.ts";

function options(args: ArgsDef): readonly string[] {
  return Object.entries(args).flatMap(([name, arg]) =>
    arg.type === "positional" ? [] : arg.type === "boolean" ? [name, `no-${name}`] : [name],
  );
}

/**
 * The parser takes any option; a misspelled one must not pass unseen.
 * @throws UsageError naming the option, and the nearest one that exists.
 */
export function refuseUnknownOptions(rawArgs: readonly string[], args: ArgsDef): void {
  const known = [...options(args), "help", "h"];
  for (const raw of rawArgs) {
    if (raw === "--") return;
    const name = /^--?([A-Za-z][\w-]*)/.exec(raw)?.[1];
    if (name === undefined || known.includes(name)) continue;
    const near = nearestWord(name, known);
    throw new UsageError(`unknown option "${raw}"${near === undefined ? "" : `; did you mean "--${near}"?`}`);
  }
}
