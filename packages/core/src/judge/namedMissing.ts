import { fields } from "../read/fieldCatalog.ts";

/** Path of the choice whose every word gives a field its default; undefined where some word, or none, does. */
function choiceBehind(path: string): string | undefined {
  const assumed = fields.get(path)?.spec.assumed;
  if (assumed === undefined || !("byChoice" in assumed)) return undefined;
  const choice = fields.get(assumed.byChoice)?.spec;
  const covered =
    choice?.kind === "choice" &&
    Object.keys(choice.options).every((word) => Object.hasOwn(assumed.values, word));
  return covered ? assumed.byChoice : undefined;
}

/**
 * The inputs to name of those that are missing, each once, sorted. What follows from another that is missing too, as
 * the growth of a part from its material, need not be given beside it.
 */
export function namedMissing(missing: Iterable<string>): readonly string[] {
  const all = new Set(missing);
  const follows = (path: string) => {
    const choice = choiceBehind(path);
    return choice !== undefined && all.has(choice);
  };
  return [...all].filter((path) => !follows(path)).sort();
}
