import type { DimensionSpec } from "./FieldSpec.ts";

/** The usual tolerance of a field with its unit, `± 0.01 mm`; undefined where a bare value is taken as exact. */
export function describeTolerance({ tolerance, unit }: DimensionSpec): string | undefined {
  if (tolerance === undefined) return undefined;
  return unit === "1" || /[^\d.]/.test(tolerance) ? `± ${tolerance}` : `± ${tolerance} ${unit}`;
}
