import { fields } from "../../read/fieldCatalog.ts";
import { castings, type FieldGroup, fieldChanges } from "./fieldChanges.ts";
import type { Changes } from "./works.ts";

const byName = new Map<string, Changes>(
  fieldChanges.flatMap(({ changes, names }) => names.map((name) => [name, changes] as const)),
);

/** Whether a name of the table means a field: its path, or `*.` and its own name in whatever part. */
const means = (name: string, path: string): boolean =>
  name.startsWith("*.") ? path.endsWith(name.slice(1)) : path === name;

/** The fields that a group of the table names, each name with its paths; none where there is no such field. */
export function pathsNamed({ names }: FieldGroup): ReadonlyMap<string, readonly string[]> {
  const dimensions = [...fields].flatMap(([path, { spec }]) => (spec.kind === "dimension" ? [path] : []));
  return new Map(names.map((name) => [name, dimensions.filter((path) => means(name, path))]));
}

/** Another casting is another engine. */
function withoutPart({ up, down }: Changes): Changes {
  return {
    ...(up === undefined || up === "part" ? {} : { up }),
    ...(down === undefined || down === "part" ? {} : { down }),
  };
}

/**
 * What work changes a dimension: as the table says; otherwise a part that is bought is another part, and what is
 * planned, read off or found is not changed. Castings are given: of them only what is machined, shimmed or set is.
 * @param path of a field; anything but a dimension is not changed
 */
export function changesOf(path: string): Changes {
  const field = fields.get(path);
  if (field?.spec.kind !== "dimension") return {};
  const listed = byName.get(path) ?? byName.get(`*.${path.slice(path.indexOf(".") + 1)}`);
  if (castings.includes(field.part?.key ?? "")) return withoutPart(listed ?? {});
  if (listed !== undefined) return listed;
  return field.part === undefined || field.part.bought === false ? {} : { up: "part", down: "part" };
}
