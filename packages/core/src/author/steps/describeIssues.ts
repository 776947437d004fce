import type * as z from "zod";
import { nearestWord } from "../../read/nearestWord.ts";
import type { AuthorIssue } from "../RuleProblem.ts";
import type { Shapes } from "./shapesOf.ts";
import { showValue } from "./showValue.ts";

type Issue = z.core.$ZodIssue;
type Path = AuthorIssue["path"];

/** What stands at a place in data, or undefined. */
export function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === "object" && value !== null ? (value as Record<PropertyKey, unknown>)[step] : undefined,
    data,
  );
}

function unknownKey(key: string, path: Path, shapes: Shapes): AuthorIssue {
  const known = shapes.keysAt(path);
  const near = nearestWord(key, known);
  const issue = {
    kind: "unknown-key",
    path: [...path, key],
    key: true,
    found: `the unknown key "${key}"`,
    expected: `one of ${known.join(", ")}`,
  } as const;
  return near === undefined ? issue : { ...issue, didYouMean: near };
}

function missingKey(path: Path, shapes: Shapes): AuthorIssue {
  const key = String(path.at(-1));
  const found = `no "${key}"`;
  return { kind: "missing-key", path, found, expected: `${key}: ${shapes.describe(path)}` };
}

function described(issue: Issue, data: unknown, shapes: Shapes): readonly AuthorIssue[] {
  const path = issue.path.map((step) => (typeof step === "number" ? step : String(step)));
  const value = valueAt(data, path);
  const found = showValue(value);
  if (issue.code === "unrecognized_keys") return issue.keys.map((key) => unknownKey(key, path, shapes));
  if (value === undefined && path.length > 0) return [missingKey(path, shapes)];
  switch (issue.code) {
    case "invalid_value": {
      const words = issue.values.map(String);
      const near = typeof value === "string" ? nearestWord(value, words) : undefined;
      const wrong = { kind: "wrong-word", path, found, expected: `one of ${words.join(", ")}` } as const;
      return [near === undefined ? wrong : { ...wrong, didYouMean: near }];
    }
    case "too_small":
    case "too_big": {
      const [word, bound] =
        issue.code === "too_small" ? ["at least", issue.minimum] : ["at most", issue.maximum];
      const what = issue.origin === "array" ? "entries" : "characters";
      return [{ kind: "wrong-length", path, found, expected: `${word} ${bound} ${what}` }];
    }
    case "invalid_key":
      return [
        {
          kind: "wrong-form",
          path,
          key: true,
          found: `"${path.at(-1)}"`,
          expected: "a name such as least or mostHot",
        },
      ];
    case "invalid_format":
      return [{ kind: "wrong-form", path, found, expected: issue.message }];
    default:
      return [{ kind: "wrong-type", path, found, expected: shapes.describe(path) }];
  }
}

/** What a schema refuses, in the words of a person who writes the file. */
export function describeIssues(
  issues: readonly Issue[],
  data: unknown,
  shapes: Shapes,
): readonly AuthorIssue[] {
  return issues.flatMap((issue) => described(issue, data, shapes));
}
