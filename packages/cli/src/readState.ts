import { type Build, readBuildText } from "trialfit";
import { isRecord, MAX_RECORD_LENGTH, readRecord } from "trialfit/papers";
import { readInput } from "./readInput.ts";

/**
 * One state of an engine: a build file, or the record of one, of this version or an older one. What had to be done
 * to read an older record is said on standard error.
 * @throws InputError when it is neither
 */
export async function readState(file: string): Promise<Build> {
  const text = await readInput(file, "a build file or the record of an engine", MAX_RECORD_LENGTH);
  const name = file === "-" ? "standard input" : file;
  if (!isRecord(text)) return readBuildText(text, name);
  const { build, migrated } = readRecord(text, name);
  for (const one of migrated) process.stderr.write(`${name}: ${one}\n`);
  return readBuildText(build, name);
}
