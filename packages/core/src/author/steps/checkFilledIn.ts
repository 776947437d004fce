import { FILL_IN } from "../fillIn.ts";
import type { AuthorIssue, CheckedRule } from "../RuleProblem.ts";

function* texts(
  value: unknown,
  path: AuthorIssue["path"],
): Generator<readonly [AuthorIssue["path"], string]> {
  if (typeof value === "string") yield [path, value];
  else if (Array.isArray(value))
    for (const [index, one] of value.entries()) yield* texts(one, [...path, index]);
  else if (typeof value === "object" && value !== null)
    for (const [key, one] of Object.entries(value)) yield* texts(one, [...path, key]);
}

/** Finds what a new rule left to its author. */
export function checkFilledIn({ file }: Pick<CheckedRule, "file">): readonly AuthorIssue[] {
  return [...texts(file, [])]
    .filter(([, text]) => text.startsWith(FILL_IN))
    .map(([path, text]) => ({
      kind: "to-fill-in",
      path,
      found: "a place that is left to you",
      expected: text.slice(FILL_IN.length).trim().replace(/\.$/, ""),
    }));
}
