import * as z from "zod/mini";
import { DimensionError } from "../units/parseDimension.ts";
import { type FieldSpec, fieldSpecs } from "./FieldSpec.ts";
import type { FieldValue } from "./FieldValue.ts";
import type { WantedValue } from "./WantedValue.ts";

/** What a field schema yields: the value, and for a dimension with a place the word that came with it. */
export interface ReadField {
  readonly value: FieldValue | WantedValue;
  readonly place?: string;
}

/** A schema that reads one field. */
export type FieldSchema = z.ZodMiniType<ReadField>;

/** Registers what a field is beside the schema that reads it. */
export function describeField<S extends z.ZodMiniType>(schema: S, spec: FieldSpec): S {
  fieldSpecs.add(schema, spec);
  return schema;
}

/** What a transformation of a schema is given beside the value. */
export type ReadContext = z.core.ParsePayload;

/** A schema of a field, from one that knows the form of what is written and what that comes to. */
export function readAs<const S extends z.ZodMiniType>(
  form: S,
  read: (raw: z.output<S>, ctx: ReadContext) => ReadField,
): FieldSchema {
  return z.pipe(form, z.transform(read)) as unknown as FieldSchema;
}

/** Refuses through zod, keeping what was expected apart from what was found. */
export function refuse(
  ctx: ReadContext,
  found: string,
  expected: string,
  path: readonly PropertyKey[] = [],
): never {
  ctx.issues.push({
    code: "custom",
    message: found,
    params: { expected },
    path: [...path],
    input: ctx.value,
  });
  return z.NEVER;
}

/** Runs a reader, turning what it refuses into an issue of the schema. */
export function attempt<T>(ctx: ReadContext, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (error instanceof DimensionError) return refuse(ctx, error.message, error.expected, error.path);
    throw error;
  }
}
