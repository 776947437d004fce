import { type SetFile, setFiles } from "@trialfit/rules";
import { nearestWord, readSetText } from "trialfit";
import { readInput } from "./readInput.ts";
import { UsageError } from "./UsageError.ts";

/**
 * The sets that an option names: shipped ones by their names, others from files.
 * @throws InputError when a file is not a set; UsageError when a name is neither a shipped set nor a file
 */
export async function readSets(
  option: string | undefined,
): Promise<readonly (string | SetFile)[] | undefined> {
  if (option === undefined) return undefined;
  const names = option.split(",").map((name) => name.trim());
  const sets: (string | SetFile)[] = [];
  for (const name of names) {
    const shipped = setFiles.find(({ id }) => id === name);
    if (shipped !== undefined) sets.push(shipped);
    else if (!/[./\\]/.test(name)) {
      const near = nearestWord(
        name,
        setFiles.map(({ id }) => id),
      );
      throw new UsageError(
        `no set is called "${name}"${near === undefined ? "" : `; did you mean "${near}"?`} (a file is named with its ending, as shop.yaml)`,
      );
    } else {
      const others = sets.filter((one): one is SetFile => typeof one !== "string");
      sets.push(readSetText(await readInput(name, "a set of rules"), name, others));
    }
  }
  return sets;
}
