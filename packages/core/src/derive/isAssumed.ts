import type { FieldValue } from "../read/FieldValue.ts";

/** Whether a value is a documented default or an estimate, not a measured or published one. */
export function isAssumed(value: FieldValue | undefined): boolean {
  return value !== undefined && value.kind !== "text" && value.provenance === "assumed";
}
