import { BUILD_FORMAT } from "../../read/buildSchema.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import type { FieldSchema } from "../../read/fieldSchema.ts";
import { InputError } from "../../read/Problem.ts";
import { readFrom } from "../../read/readData.ts";
import { DimensionError } from "../../units/parseDimension.ts";
import { guardCell } from "./guardCell.ts";
import { MAX_NAME, measuredColumns, PART_ID } from "./listColumns.ts";
import type { ListedPart } from "./PartsList.ts";
import { attemptCell, entryOf, fieldOf, type RowReader, shown } from "./RowReader.ts";
import { readPrice } from "./readPrice.ts";

function readId(reader: RowReader): string | undefined {
  const { row, flaws } = reader;
  if (!row.cells.has("id")) {
    flaws.push({
      place: row.place(),
      field: fieldOf(reader, "id"),
      found: "nothing",
      expected: "an id for each part",
    });
    return undefined;
  }
  return attemptCell(reader, "id", ({ value }) => {
    if (typeof value === "string" && PART_ID.test(value)) return value;
    throw new DimensionError(
      "not an id",
      "letters, digits and . _ -, beginning with a letter or digit, at most 64",
    );
  });
}

function readName(reader: RowReader): string | undefined {
  return attemptCell(reader, "name", ({ value }) => {
    if (typeof value !== "string" || value.length > MAX_NAME)
      throw new DimensionError("not a name", `a text of at most ${MAX_NAME} characters`);
    guardCell(value);
    return value;
  });
}

function readMeasured(reader: RowReader, name: string, schema: FieldSchema): number | undefined {
  const entry = entryOf(reader, name);
  if (entry === undefined) return undefined;
  const result = schema.safeParse(entry);
  const value = result.success ? result.data.value : undefined;
  if (value?.kind === "dimension") return value.nominal;
  const { message, params } = (result.error?.issues[0] ?? {}) as {
    readonly message?: string;
    readonly params?: { readonly expected?: string };
  };
  reader.flaws.push({
    place: reader.row.cells.get(name)!.place(),
    field: fieldOf(reader, name),
    found: `${shown(reader.row.cells.get(name)!)}${message === undefined ? "" : `: ${message}`}`,
    expected: params?.expected ?? "a number",
  });
  return undefined;
}

/** The fields of the part, read as those of a build file are. */
function readFields(reader: RowReader): Pick<ListedPart, "values" | "entries"> {
  const { list, head, row, flaws } = reader;
  const { key } = head.part.spec;
  const before = flaws.length;
  const names = [...row.cells.keys()].filter((name) => Object.hasOwn(head.part.fields, name));
  const entries = names.map((name) => [name, entryOf(reader, name)] as const);
  const nothing = { values: new Map<string, FieldValue>(), entries: {} };
  if (flaws.length > before) return nothing;
  const placeOf = (path: string) => row.cells.get(path.split(".")[1]!);
  const add = (path: string, found: string, expected: string, more: object = {}) =>
    flaws.push({
      place: placeOf(path)?.place() ?? row.place(),
      field: fieldOf(reader, path.split(".").slice(1).join(".")),
      found,
      expected,
      ...more,
    });
  try {
    const data = { trialfit: BUILD_FORMAT, name: "part", [key]: Object.fromEntries(entries) };
    const { values, wanted } = readFrom(data, list.file, () => undefined);
    for (const path of wanted.keys())
      add(
        path,
        "a dimension that is to be found",
        "the size that the part has: sizes are found by `trialfit solve`",
      );
    for (const [path, value] of values)
      if (value.kind === "dimension" && value.positions !== undefined)
        add(path, "readings by position", "one size: a part of a list stands nowhere yet");
    return { values, entries: Object.fromEntries(entries) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    for (const { field, found, expected, didYouMean } of error.problems)
      add(field, found, expected, didYouMean === undefined ? {} : { didYouMean });
    return nothing;
  }
}

/** Reads one row of a list. @returns undefined when it has no id; what else is wrong with it is added to the flaws */
export function readListRow(reader: RowReader): ListedPart | undefined {
  const { row } = reader;
  const id = readId(reader);
  const name = readName(reader);
  const price = readPrice(reader);
  const measured = Object.entries(measuredColumns).flatMap(([column, schema]) => {
    const value = readMeasured(reader, column, schema);
    return value === undefined ? [] : [[column, value] as const];
  });
  const fields = readFields(reader);
  if (id === undefined) return undefined;
  return {
    id,
    ...(name === undefined ? {} : { name }),
    ...fields,
    ...(price === undefined ? {} : { price }),
    ...Object.fromEntries(measured),
    line: row.place().line ?? 0,
  };
}
