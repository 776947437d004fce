import * as z from "zod/mini";
import { countOf } from "./countOf.ts";
import { type ColumnSpec, fieldSpecs, type TableSpec } from "./FieldSpec.ts";
import type { TableRow } from "./FieldValue.ts";
import {
  attempt,
  describeField,
  type FieldSchema,
  type ReadContext,
  type ReadField,
  readAs,
  refuse,
} from "./fieldSchema.ts";

export interface TableDeclaration extends Omit<TableSpec, "kind" | "columns" | "optional"> {
  /** Column name → schema of its cells: a dimension, a choice or a count. */
  readonly columns: Readonly<Record<string, FieldSchema>>;
  readonly optional?: readonly string[];
  /** Refuses a table whose rows do not go together. @throws DimensionError */
  readonly check?: (rows: readonly TableRow[]) => void;
}

function columnSpec(name: string, schema: FieldSchema): ColumnSpec {
  const spec = fieldSpecs.get(schema);
  if (spec === undefined || spec.kind === "table" || spec.kind === "text")
    throw new Error(`the column ${name} must be a dimension, a choice or a count`);
  return spec;
}

type RawRow = Readonly<Record<string, ReadField | undefined>>;

/** One row as numbers and words. A cell has no tolerance of its own: it would be lost, so it is refused. */
function readRow(cells: RawRow, index: number, ctx: ReadContext): TableRow {
  const row: Record<string, number | string> = {};
  for (const [name, cell] of Object.entries(cells)) {
    const value = cell?.value;
    if (value?.kind === "wanted")
      refuse(ctx, "a cell that is to be found", "a number: only fields can be found", [index, name]);
    if (value?.kind === "choice") row[name] = value.value;
    if (value?.kind !== "dimension") continue;
    if (value.toleranceFrom === "stated" && value.low < value.high)
      refuse(ctx, "a tolerance in a table", `the value alone: ${value.text.replace(/\s*[±+].*$/, "")}`, [
        index,
        name,
      ]);
    row[name] = value.nominal;
  }
  return row;
}

/** A list of rows with the same columns. @param provenance where such a table usually comes from */
export function table(
  { columns, optional = [], check, ...rest }: TableDeclaration,
  provenance: "data-sheet" | "target" = "data-sheet",
) {
  const spec: TableSpec = {
    kind: "table",
    ...rest,
    optional,
    columns: Object.fromEntries(
      Object.entries(columns).map(([name, schema]) => [name, columnSpec(name, schema)]),
    ),
  };
  const shape = Object.fromEntries(
    Object.entries(columns).map(([name, schema]) => [
      name,
      optional.includes(name) ? z.optional(schema) : schema,
    ]),
  );
  const schema = readAs(
    z.array(z.strictObject(shape)).check(z.minLength(rest.least), z.maxLength(rest.most)),
    (entries, ctx): ReadField => {
      const rows = entries.map((entry, index) => readRow(entry as RawRow, index, ctx));
      if (check !== undefined) attempt(ctx, () => check(rows));
      return { value: { kind: "table", rows, provenance, text: countOf(rows.length, "row") } };
    },
  );
  return describeField(schema, spec);
}
