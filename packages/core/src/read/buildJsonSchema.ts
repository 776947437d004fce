import * as z from "zod/mini";
import { describeSyntax } from "../units/parseDimension.ts";
import { buildSchema, parts } from "./buildSchema.ts";
import { describeDefault } from "./describeDefault.ts";
import { type FieldSpec, fieldSpecs } from "./FieldSpec.ts";
import { syntaxOf } from "./syntaxOf.ts";

function note(spec: FieldSpec): string {
  if (spec.kind !== "dimension") return spec.help;
  const fallback =
    spec.assumed === undefined ? "" : ` When left out: ${describeDefault(spec.assumed).join("; ")}.`;
  return `${spec.help} Write ${describeSyntax(syntaxOf(spec))}.${fallback}`;
}

/**
 * JSON Schema of the build file, for editors: draft-07, which editors know best. Generated from the schemas
 * that read the file, so that it cannot drift from them.
 */
export function buildJsonSchema(): object {
  const schema = z.toJSONSchema(buildSchema, {
    target: "draft-07",
    io: "input",
    override: ({ zodSchema, jsonSchema }) => {
      const spec = fieldSpecs.get(zodSchema as unknown as z.ZodMiniType);
      if (spec === undefined) return;
      jsonSchema.title = spec.label;
      jsonSchema.description = note(spec);
      if (spec.kind === "dimension" && spec.unit !== "1") {
        jsonSchema.anyOf = (jsonSchema.anyOf ?? []).filter((branch) => branch.type !== "number");
      }
    },
  }) as { properties: Record<string, { title?: string; description?: string }> };
  for (const part of parts) {
    const property = schema.properties[part.spec.key];
    if (property !== undefined)
      Object.assign(property, { title: part.spec.label, description: part.spec.help });
  }
  return { title: "trialfit build file", ...schema };
}
