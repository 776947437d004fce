import * as z from "zod";
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
export type FieldSchema = z.ZodType<ReadField>;

/** Registers what a field is beside the schema that reads it. */
export function describeField<S extends z.ZodType>(schema: S, spec: FieldSpec): S {
  fieldSpecs.add(schema, spec);
  return schema;
}

/** Refuses through zod, keeping what was expected apart from what was found. */
export function refuse(
  ctx: z.RefinementCtx,
  found: string,
  expected: string,
  path: readonly PropertyKey[] = [],
): never {
  ctx.addIssue({ code: "custom", message: found, params: { expected }, path: [...path] });
  return z.NEVER;
}

/** Runs a reader, turning what it refuses into an issue of the schema. */
export function attempt<T>(ctx: z.RefinementCtx, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (error instanceof DimensionError) return refuse(ctx, error.message, error.expected, error.path);
    throw error;
  }
}
