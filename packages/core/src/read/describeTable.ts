import type { TableSpec } from "./FieldSpec.ts";

/** What a table is made of, for errors and explanations. */
export function describeTable({ least, most, columns, optional }: TableSpec): string {
  const names = Object.keys(columns);
  const due = names.filter((name) => !optional.includes(name));
  const more = optional.length === 0 ? "" : `, and where needed ${optional.join(", ")}`;
  const rows = least === most ? `${least} rows` : `${least} to ${most} rows`;
  return `a list of ${rows}, each with ${due.join(" and ")}${more}`;
}
