import { z } from "zod";
import { DimensionError } from "../units/parseDimension.ts";
import { describeCount } from "./describeCount.ts";
import {
  type ChoiceSpec,
  type CountSpec,
  type DimensionSpec,
  type FieldSpec,
  fieldSpecs,
  type OutlineSpec,
  provenances,
  type TextSpec,
} from "./FieldSpec.ts";
import type { FieldValue } from "./FieldValue.ts";
import { type DimensionDetail, readDimension } from "./readDimension.ts";
import { type OutlineEntry, readOutline, requireWholeOutline } from "./readOutline.ts";

/** What a field schema yields: the value, and for a dimension with a place the word that came with it. */
export interface ReadField {
  readonly value: FieldValue;
  readonly place?: string;
}

function describe<S extends z.ZodType>(schema: S, spec: FieldSpec): S {
  fieldSpecs.add(schema, spec);
  return schema;
}

/** Refuses through zod, keeping what was expected apart from what was found. */
function refuse(ctx: z.RefinementCtx, found: string, expected: string): never {
  ctx.addIssue({ code: "custom", message: found, params: { expected } });
  return z.NEVER;
}

function attempt<T>(ctx: z.RefinementCtx, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (error instanceof DimensionError) return refuse(ctx, error.message, error.expected);
    throw error;
  }
}

const detailSchema = z.strictObject({
  value: z.union([z.string(), z.number()]),
  tolerance: z.string().optional(),
  provenance: z.enum(provenances).optional(),
  instrument: z.string().optional(),
  note: z.string().optional(),
});

/** A number with unit; `88.50 mm ± 0.01` or an object that also says where it comes from. */
export function dimension(
  spec: Omit<DimensionSpec, "kind">,
  usual: "data-sheet" | "target" | "assumed" = "data-sheet",
) {
  const full: DimensionSpec = { kind: "dimension", ...spec };
  const schema = z.union([z.string(), z.number(), detailSchema]).transform((raw, ctx): ReadField => {
    const entry: string | DimensionDetail = typeof raw === "number" ? String(raw) : raw;
    const { value, place } = attempt(ctx, () => readDimension(entry, full, usual));
    return place === undefined ? { value } : { value, place };
  });
  return describe(schema, full);
}

/** One of a closed list of words. */
export function choice(spec: Omit<ChoiceSpec, "kind">) {
  const options = Object.keys(spec.options) as [string, ...string[]];
  const schema = z
    .enum(options)
    .transform((value): ReadField => ({ value: { kind: "choice", value, provenance: "data-sheet" } }));
  return describe(schema, { kind: "choice", ...spec });
}

/** A whole number that is counted, not measured. */
export function count(spec: Omit<CountSpec, "kind">) {
  const schema = z.union([z.string(), z.number()]).transform((raw, ctx): ReadField => {
    const text = String(raw).trim();
    const value = Number(text);
    if (!/^\d+$/.test(text) || value < spec.least || value > spec.most)
      return refuse(ctx, "not such a count", describeCount(spec));
    return {
      value: {
        kind: "dimension",
        nominal: value,
        low: value,
        high: value,
        unit: "1",
        text,
        provenance: "data-sheet",
        toleranceFrom: "none",
      },
    };
  });
  return describe(schema, { kind: "count", ...spec });
}

/** Free text for people; no rule reads it. */
export function text(spec: Omit<TextSpec, "kind">) {
  const schema = z
    .string()
    .max(4000)
    .transform((value): ReadField => ({ value: { kind: "text", value } }));
  return describe(schema, { kind: "text", ...spec });
}

const outlineEntrySchema = z.strictObject({
  along: z
    .string()
    .describe('Along the rod from the big-end centre: "24 mm towards cap" or "9 mm towards pin".'),
  across: z.string().describe("Across the rod from its axis: 37.5 mm."),
  cornerRadius: z.string().optional().describe("Radius of a rounded corner at this point."),
  arcRadius: z
    .string()
    .optional()
    .describe("Radius of an arc, bulging outwards, from the point before to this one."),
});

/** A half outline as a list of corners and arcs. */
export function outline(spec: Omit<OutlineSpec, "kind">) {
  const full: OutlineSpec = { kind: "outline", ...spec };
  const schema = z
    .array(outlineEntrySchema)
    .min(3)
    .max(200)
    .transform((entries, ctx): ReadField => {
      let broken = false;
      const vertices = entries.map((entry, index) =>
        attempt(
          {
            ...ctx,
            addIssue: (issue: object) => {
              broken = true;
              ctx.addIssue({ ...issue, path: [index] } as never);
            },
          } as z.RefinementCtx,
          () => readOutline(entry as OutlineEntry),
        ),
      );
      if (!broken) attempt(ctx, () => requireWholeOutline(vertices));
      return {
        value: { kind: "outline", vertices, provenance: "data-sheet", text: `${entries.length} points` },
      };
    });
  return describe(schema, full);
}
