import type { RuleExample, RuleFile } from "@trialfit/rules";
import { parseSource } from "../read/parseSource.ts";
import { printExample } from "./printExample.ts";

/**
 * A rule file with examples added at its end.
 * @returns undefined where `examples:` is not the last key, or is not written as a list with a line for each: then
 * they are to be added by hand
 */
export function appendExamples(text: string, examples: readonly RuleExample[]): string | undefined {
  const before = parseSource(text, "rule").data as RuleFile;
  if (Object.keys(before).at(-1) !== "examples" || !/^examples:[^\S\n]*\n {2}- /m.test(text))
    return undefined;
  const added = `${text.trimEnd()}\n${examples.map(printExample).join("")}`;
  const after = parseSource(added, "rule").data as RuleFile;
  return after.examples.length === before.examples.length + examples.length ? added : undefined;
}
