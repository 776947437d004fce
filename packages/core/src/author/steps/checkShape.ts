import { ruleFile } from "@trialfit/rules";
import type { z } from "zod";
import { nearestWord } from "../../read/nearestWord.ts";
import type { AuthorIssue } from "../RuleProblem.ts";
import { checkConditionShape } from "./checkConditionShape.ts";
import { describeShape, keysAt } from "./ruleShape.ts";
import { showValue } from "./showValue.ts";

type Issue = z.core.$ZodIssue;
type Path = AuthorIssue["path"];

function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === "object" && value !== null ? (value as Record<PropertyKey, unknown>)[step] : undefined,
    data,
  );
}

/** Where conditions stand: the schema's own words about them help nobody. */
function conditionPaths(data: unknown): readonly Path[] {
  const at = (path: Path): readonly Path[] => (valueAt(data, path) === undefined ? [] : [path]);
  const limits = valueAt(data, ["limits"]);
  const names = typeof limits === "object" && limits !== null ? Object.keys(limits) : [];
  const cases = names.flatMap((name) => {
    const list = valueAt(data, ["limits", name, "cases"]);
    return Array.isArray(list)
      ? list.flatMap((_, index) => at(["limits", name, "cases", index, "when"]))
      : [];
  });
  return [...at(["when"]), ...at(["requires"]), ...cases];
}

function unknownKey(key: string, path: Path): AuthorIssue {
  const known = keysAt(path);
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

function missingKey(path: Path): AuthorIssue {
  const key = String(path.at(-1));
  const found = `no "${key}"`;
  return { kind: "missing-key", path, found, expected: `${key}: ${describeShape(path)}` };
}

function described(issue: Issue, data: unknown): readonly AuthorIssue[] {
  const path = issue.path.map((step) => (typeof step === "number" ? step : String(step)));
  const value = valueAt(data, path);
  const found = showValue(value);
  if (issue.code === "unrecognized_keys") return issue.keys.map((key) => unknownKey(key, path));
  if (value === undefined && path.length > 0) return [missingKey(path)];
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
      return [{ kind: "wrong-type", path, found, expected: describeShape(path) }];
  }
}

/** Whether the data has the form of a rule file: its keys, its words, its lists. */
export function checkShape(data: unknown): readonly AuthorIssue[] {
  const result = ruleFile.safeParse(data);
  if (result.success) return [];
  if (typeof data !== "object" || data === null || Array.isArray(data)) {
    const found = data === null || data === "" ? "an empty file" : showValue(data);
    return [{ kind: "wrong-type", path: [], found, expected: "a rule file: id, title, system and the rest" }];
  }
  const conditions = conditionPaths(data);
  const within = (issue: Issue) =>
    conditions.some((path) => path.every((step, index) => String(issue.path[index]) === String(step)));
  return [
    ...result.error.issues.filter((issue) => !within(issue)).flatMap((issue) => described(issue, data)),
    ...conditions.flatMap((path) => checkConditionShape(valueAt(data, path), path)),
  ];
}
