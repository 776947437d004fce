import { InputError, listLimits, type PartsList, type Problem, readPartsListText } from "trialfit";
import { readInput } from "./readInput.ts";

/** A parts list as it is written, with its name for messages. */
export interface ListText {
  readonly file: string;
  readonly text: string;
}

/** One outcome for each of some, or the problems of all that have any. @throws InputError */
async function each<T, R>(all: readonly T[], read: (one: T) => R | Promise<R>): Promise<readonly R[]> {
  const problems: Problem[] = [];
  const results: R[] = [];
  for (const one of all) {
    try {
      results.push(await read(one));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push(...error.problems);
    }
  }
  if (problems.length > 0) throw new InputError(problems);
  return results;
}

/** What stands in the files of parts lists. @throws InputError with those that cannot be read */
export function readListTexts(files: readonly string[]): Promise<readonly ListText[]> {
  return each(files, async (file) => ({
    file: file === "-" ? "standard input" : file,
    text: await readInput(file, "a parts list", listLimits.characters),
  }));
}

/** @throws InputError with the problems of all of them */
export function listsOf(texts: readonly ListText[]): Promise<readonly PartsList[]> {
  return each(texts, ({ text, file }) => readPartsListText(text, file));
}

/** Reads parts lists. @throws InputError with the problems of all of them */
export async function readLists(files: readonly string[]): Promise<readonly PartsList[]> {
  return listsOf(await readListTexts(files));
}
