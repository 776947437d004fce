import { InputError } from "../../read/Problem.ts";
import type { PartsList } from "./PartsList.ts";
import { listLimits, type RawList } from "./RawList.ts";
import { readCsvList } from "./readCsvList.ts";
import { readPartsList } from "./readPartsList.ts";
import { readTreeList } from "./readTreeList.ts";

/**
 * Reads a list of parts of one kind: CSV when the file's name ends in `.csv` or `.tsv`, YAML or JSON otherwise (these
 * up to the length of a build file's text, half a megabyte).
 * @param text the file's text
 * @param file its name, for messages
 * @throws InputError with the problems: file, line, column, row and column head, found, expected
 */
export function readPartsListText(text: string, file: string): PartsList {
  if (text.length > listLimits.characters)
    throw new InputError([
      {
        file,
        line: undefined,
        column: undefined,
        field: "",
        found: `${text.length} characters`,
        expected: `a list of at most ${listLimits.characters} characters`,
      },
    ]);
  const raw: RawList = /\.[ct]sv$/i.test(file) ? readCsvList(text, file) : readTreeList(text, file);
  return readPartsList(raw);
}
