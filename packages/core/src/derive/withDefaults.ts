import type { Build } from "../read/Build.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import { fields } from "../read/fieldCatalog.ts";
import { readDimension } from "../read/readDimension.ts";

function defaultOf(path: string): FieldValue | undefined {
  const spec = fields.get(path)?.spec;
  if (spec?.assumed === undefined) return undefined;
  if (spec.kind === "dimension")
    return readDimension({ value: spec.assumed.value, provenance: "assumed" }, spec, "assumed").value;
  if (spec.kind === "choice") return { kind: "choice", value: spec.assumed.value, provenance: "assumed" };
  return undefined;
}

const defaults: ReadonlyMap<string, FieldValue> = new Map(
  [...fields.keys()].flatMap((path) => {
    const value = defaultOf(path);
    return value === undefined ? [] : [[path, value] as const];
  }),
);

/** The values of a build, with the documented default of every field that was left out and has one. */
export function withDefaults(build: Build): ReadonlyMap<string, FieldValue> {
  const values = new Map(build.values);
  for (const [path, value] of defaults) {
    const unless = fields.get(path)?.spec.assumed?.unless ?? [];
    if (!values.has(path) && !unless.some((other) => build.values.has(other))) values.set(path, value);
  }
  return values;
}
