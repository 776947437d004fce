import { parts, topFields } from "./buildSchema.ts";
import { isConfirmationPath } from "./confirmations.ts";
import { type FieldSpec, fieldSpecs, type PartSpec } from "./FieldSpec.ts";
import type { FieldSchema } from "./fieldSchema.ts";

/** One field of the build file: its path, what it is, and the part it belongs to. */
export interface Field {
  readonly path: string;
  readonly spec: FieldSpec;
  /** Undefined for the fields at the top of the file. */
  readonly part: PartSpec | undefined;
}

function fieldOf(path: string, schema: FieldSchema, part: PartSpec | undefined): Field {
  const spec = fieldSpecs.get(schema);
  if (spec === undefined) throw new Error(`the field ${path} was declared without its spec`);
  return { path, spec, part };
}

/** Every field of the build file by path, in file order. */
export const fields: ReadonlyMap<string, Field> = new Map(
  [
    ...Object.entries(topFields).map(([name, schema]) => fieldOf(name, schema, undefined)),
    ...parts.flatMap((part) =>
      Object.entries(part.fields).map(([name, schema]) =>
        fieldOf(`${part.spec.key}.${name}`, schema, part.spec),
      ),
    ),
  ].map((field) => [field.path, field]),
);

/** Whether a build file itself may hold what has this path: a field, the place of one, or a confirmation. */
export function isEntry(path: string): boolean {
  return fields.has(path.replace(/\.place$/, "")) || isConfirmationPath(path);
}

/** A label for people: `Crankshaft: stroke`. Falls back to the path. */
export function fieldLabel(path: string): string {
  const field = fields.get(path.replace(/\.place$/, ""));
  if (field === undefined) return isConfirmationPath(path) ? "What a person confirmed" : path;
  return field.part === undefined ? field.spec.label : `${field.part.label}: ${lowerFirst(field.spec.label)}`;
}

function lowerFirst(label: string): string {
  return label.charAt(0).toLowerCase() + label.slice(1);
}
