import * as z from "zod/mini";
import type { PartSpec } from "./FieldSpec.ts";
import type { FieldSchema, ReadField } from "./fieldSchema.ts";

/** One part: what it is, and a schema of its fields. Every field may be missing; none may be unknown. */
export interface Part {
  readonly spec: PartSpec;
  readonly fields: Readonly<Record<string, FieldSchema>>;
  readonly schema: z.ZodMiniType<Record<string, ReadField | undefined>>;
}

/** Declares a part of the build file. */
export function part(spec: PartSpec, fields: Readonly<Record<string, FieldSchema>>): Part {
  const shape = Object.fromEntries(
    Object.entries(fields).map(([name, schema]) => [name, z.optional(schema)]),
  );
  return { spec, fields, schema: z.strictObject(shape) as unknown as Part["schema"] };
}
