import * as z from "zod/mini";
import { wayOfMakingIds } from "../tables/waysOfMaking.ts";
import { describeCount } from "./describeCount.ts";
import {
  type ChoiceSpec,
  type CountSpec,
  type DimensionSpec,
  provenances,
  type TextSpec,
} from "./FieldSpec.ts";
import { attempt, describeField, type ReadField, readAs, refuse } from "./fieldSchema.ts";
import { type DimensionDetail, readDimension } from "./readDimension.ts";
import { readingSchema } from "./readingSchema.ts";
import { isWanted, readWanted } from "./readWanted.ts";
import { takenShape } from "./taken.ts";

const detailSchema = z.strictObject({
  value: z.optional(z.union([z.string(), z.number()])),
  tolerance: z.optional(z.string()),
  provenance: z.optional(z.enum(provenances)),
  instrument: z.optional(z.string()),
  uncertainty: z.optional(z.string()),
  made: z.optional(z.enum(wayOfMakingIds)),
  readings: z.optional(readingSchema),
  note: z.optional(z.string()),
  ...takenShape,
});

/** What the longer form of a dimension may say. */
export const detailKeys: readonly string[] = Object.keys(detailSchema.shape);

/** A number with unit; `88.50 mm ± 0.01` or an object that also says where it comes from. */
export function dimension(
  spec: Omit<DimensionSpec, "kind">,
  usual: "data-sheet" | "target" | "assumed" = "data-sheet",
) {
  const full: DimensionSpec = { kind: "dimension", ...spec };
  const schema = readAs(z.union([z.string(), z.number(), detailSchema]), (raw, ctx): ReadField => {
    const entry: string | DimensionDetail = typeof raw === "number" ? String(raw) : raw;
    if (typeof entry === "string" && isWanted(entry))
      return { value: attempt(ctx, () => readWanted(entry, full)) };
    const { value, place } = attempt(ctx, () => readDimension(entry, full, usual));
    return place === undefined ? { value } : { value, place };
  });
  return describeField(schema, full);
}

/** One of a closed list of words. */
export function choice(spec: Omit<ChoiceSpec, "kind">) {
  const options = Object.keys(spec.options) as [string, ...string[]];
  const schema = readAs(
    z.enum(options),
    (value): ReadField => ({ value: { kind: "choice", value, provenance: "data-sheet" } }),
  );
  return describeField(schema, { kind: "choice", ...spec });
}

/** A whole number that is counted, not measured. */
export function count(spec: Omit<CountSpec, "kind">) {
  const schema = readAs(z.union([z.string(), z.number()]), (raw, ctx): ReadField => {
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
  return describeField(schema, { kind: "count", ...spec });
}

/** Free text for people; no rule reads it. */
export function text(spec: Omit<TextSpec, "kind">) {
  const schema = readAs(
    z.string().check(z.maxLength(4000)),
    (value): ReadField => ({ value: { kind: "text", value } }),
  );
  return describeField(schema, { kind: "text", ...spec });
}
