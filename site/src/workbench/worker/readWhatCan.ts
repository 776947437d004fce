import {
  type Build,
  describeProblem,
  editBuildText,
  InputError,
  type Problem,
  readBuildText,
} from "trialfit";
import type { Trouble } from "../protocol.ts";
import { placeWords } from "./placeWords.ts";

/** A build without the entries that cannot be read, and what is wrong with these. */
export interface Readable {
  readonly build: Build | undefined;
  readonly troubles: readonly Trouble[];
}

const MOST_TRIES = 5;

/** Path of the entry in which the problem lies: the field of a part, or one at the top of the file. */
function entryOf({ field }: Problem): string {
  const [part = "", name] = field.split(".");
  return name === undefined ? part : `${part}.${name}`;
}

function trouble(problem: Problem): Trouble {
  const { field, line } = problem;
  const [path, text] = [entryOf(problem), describeProblem(problem)];
  return { path, line, text: field === "" ? text : `${placeWords(path, field)}: ${text}` };
}

/**
 * Reads a build file as far as it can be read. An entry with a problem is left out, so that the rules that need it are
 * unknown, never judged on something else; the problem is told beside it.
 */
export function readWhatCan(text: string, file: string): Readable {
  const troubles: Trouble[] = [];
  let rest = text;
  for (let attempt = 0; attempt < MOST_TRIES; attempt += 1) {
    try {
      return { build: readBuildText(rest, file), troubles };
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      troubles.push(...error.problems.map(trouble));
      const faulty = [...new Set(error.problems.map(entryOf))];
      const canBeLeftOut = faulty.every((path) => path !== "" && path !== "trialfit" && path !== "name");
      if (!canBeLeftOut) break;
      try {
        rest = editBuildText(
          rest,
          faulty.map((path) => ({ path, value: undefined })),
          file,
        );
      } catch {
        break;
      }
    }
  }
  return { build: undefined, troubles };
}
