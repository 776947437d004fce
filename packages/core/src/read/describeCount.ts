import type { CountSpec } from "./FieldSpec.ts";

/** What a count may be, for errors and explanations. */
export function describeCount({ least, most }: Pick<CountSpec, "least" | "most">): string {
  return `a whole number from ${least} to ${most}`;
}
