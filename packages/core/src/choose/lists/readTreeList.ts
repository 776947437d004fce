import { nearestWord } from "../../read/nearestWord.ts";
import { InputError, type Problem } from "../../read/Problem.ts";
import { parseSource } from "../../read/parseSource.ts";
import type { Place, RawCell, RawList, RawRow } from "./RawList.ts";

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const keys = ["part", "about", "keep", "units", "parts"];

/**
 * Takes a YAML or JSON list apart: a group with `part`, `about`, `keep`, `units` (the unit of each column, in place of
 * column heads) and `parts`, a list of groups.
 * @throws InputError with file, line, column
 */
export function readTreeList(text: string, file: string): RawList {
  const { data, locate } = parseSource(text, file);
  const at = (path: readonly PropertyKey[], key = false): Place => {
    const place = locate(path, key);
    return { line: place?.line, column: place?.column };
  };
  const cell = (value: unknown, path: readonly PropertyKey[]): RawCell => ({ value, place: () => at(path) });
  const problem = (path: readonly PropertyKey[], found: string, expected: string, key = false): Problem => ({
    file,
    ...at(path, key),
    field: path.join("."),
    found,
    expected,
  });
  if (!isGroup(data)) throw new InputError([problem([], "no parts list", `a group of ${keys.join(", ")}`)]);
  const unknown = Object.keys(data).filter((key) => !keys.includes(key));
  if (unknown.length > 0)
    throw new InputError(
      unknown.map((key) => {
        const near = nearestWord(key, keys);
        return {
          ...problem([key], `the unknown key "${key}"`, `one of ${keys.join(", ")}`, true),
          ...(near === undefined ? {} : { didYouMean: near }),
        };
      }),
    );
  const { parts, units = {}, ...head } = data;
  if (!Array.isArray(parts))
    throw new InputError([
      problem(["parts"], "no list of parts", "parts: a list, a group of fields for each"),
    ]);
  if (!isGroup(units))
    throw new InputError([problem(["units"], "no group", "units: { stroke: mm, price: EUR }")]);
  const columns = new Map<string, { unit: string | undefined; place: () => Place }>();
  for (const [name, unit] of Object.entries(units))
    columns.set(name, { unit: String(unit), place: () => at(["units", name], true) });
  const rows = parts.map((part: unknown, index): RawRow => {
    if (!isGroup(part))
      throw new InputError([problem(["parts", index], "no group", "the fields of one part")]);
    const cells = new Map<string, RawCell>();
    for (const [name, value] of Object.entries(part)) {
      if (!columns.has(name))
        columns.set(name, { unit: undefined, place: () => at(["parts", index, name], true) });
      cells.set(name, cell(value, ["parts", index, name]));
    }
    return { number: index + 1, place: () => at(["parts", index]), cells };
  });
  return {
    file,
    head: new Map(Object.entries(head).map(([key, value]) => [key, cell(value, [key])])),
    columns,
    rows,
    flaws: [],
  };
}
