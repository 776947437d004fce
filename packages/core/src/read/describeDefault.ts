import type { AssumedValue, FieldDefault } from "./FieldSpec.ts";

const taken = ({ value, because }: AssumedValue) => `${value} is taken: ${because}`;

/** What is taken when a field is left out, a line each. */
export function describeDefault(assumed: FieldDefault): readonly string[] {
  if ("value" in assumed) return [taken(assumed)];
  return Object.entries(assumed.values).map(
    ([word, value]) => `with ${assumed.byChoice} ${word}, ${taken(value)}`,
  );
}
