import { InputError, listLimits, type PartsList, type Problem, readPartsListText } from "trialfit";
import { readInput } from "./readInput.ts";

/** Reads parts lists. @throws InputError with the problems of all of them */
export async function readLists(files: readonly string[]): Promise<readonly PartsList[]> {
  const problems: Problem[] = [];
  const lists: PartsList[] = [];
  for (const file of files) {
    try {
      const text = await readInput(file, "a parts list", listLimits.characters);
      lists.push(readPartsListText(text, file === "-" ? "standard input" : file));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push(...error.problems);
    }
  }
  if (problems.length > 0) throw new InputError(problems);
  return lists;
}
