import type { DimensionSyntax } from "../units/parseDimension.ts";
import type { DimensionSpec } from "./FieldSpec.ts";

/** How a dimension of this field is written: its unit, and the words that say which way or where. */
export function syntaxOf(spec: DimensionSpec): DimensionSyntax {
  const words = spec.places ?? (spec.signs === undefined ? undefined : Object.keys(spec.signs));
  return words === undefined ? { unit: spec.unit } : { unit: spec.unit, words, wordRequired: true };
}
