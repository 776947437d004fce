import { operators } from "@trialfit/rules";
import { nearestWord } from "../../read/nearestWord.ts";
import type { AuthorIssue } from "../RuleProblem.ts";
import { showValue } from "./showValue.ts";

type Path = AuthorIssue["path"];

const COMPARISON = ["fact", "operator", "value"];
const GROUPS = ["all", "any", "not"];
const FORMS = "{ fact: …, operator: …, value: … }, or all, any or not with such comparisons inside";

function unknownKey(key: string, path: Path, known: readonly string[]): AuthorIssue {
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

function wrongType(value: unknown, path: Path, expected: string): readonly AuthorIssue[] {
  return [{ kind: "wrong-type", path, found: showValue(value), expected }];
}

function checkValue(value: unknown, path: Path): readonly AuthorIssue[] {
  const expected = "a text with its unit, a list of words, or { fact: … }";
  if (typeof value === "string") return [];
  if (Array.isArray(value)) {
    if (value.length === 0) return wrongType(value, path, expected);
    return value.flatMap((one, index) =>
      typeof one === "string" ? [] : wrongType(one, [...path, index], "a word"),
    );
  }
  if (typeof value !== "object" || value === null) return wrongType(value, path, expected);
  const unknown = Object.keys(value).filter((key) => key !== "fact");
  if (unknown.length > 0) return unknown.map((key) => unknownKey(key, path, ["fact"]));
  const { fact } = value as { fact?: unknown };
  return typeof fact === "string"
    ? []
    : wrongType(fact, path, "{ fact: … } with the name of a fact or limit");
}

function checkComparison(data: Readonly<Record<string, unknown>>, path: Path): readonly AuthorIssue[] {
  const unknown = Object.keys(data).filter((key) => !COMPARISON.includes(key));
  const issues = unknown.map((key) => unknownKey(key, path, [...COMPARISON, ...GROUPS]));
  if (unknown.some((key) => nearestWord(key, GROUPS) !== undefined)) return issues;
  for (const key of COMPARISON.filter((one) => !(one in data))) {
    const found = `a comparison without "${key}"`;
    issues.push({ kind: "missing-key", path, found, expected: FORMS });
  }
  const { fact, operator, value } = data;
  if ("fact" in data && (typeof fact !== "string" || fact === ""))
    issues.push(...wrongType(fact, [...path, "fact"], "the name of a field or quantity"));
  if ("operator" in data && !operators.includes(operator as (typeof operators)[number])) {
    const near = typeof operator === "string" ? nearestWord(operator, operators) : undefined;
    const issue = {
      kind: "wrong-word",
      path: [...path, "operator"],
      found: showValue(operator),
      expected: `one of ${operators.join(", ")}`,
    } as const;
    issues.push(near === undefined ? issue : { ...issue, didYouMean: near });
  }
  return "value" in data ? [...issues, ...checkValue(value, [...path, "value"])] : issues;
}

/** A condition is a comparison, or a group of conditions. */
export function checkConditionShape(data: unknown, path: Path): readonly AuthorIssue[] {
  if (typeof data !== "object" || data === null || Array.isArray(data)) return wrongType(data, path, FORMS);
  const keys = Object.keys(data);
  const group = GROUPS.find((one) => keys.includes(one));
  if (group === undefined) return checkComparison(data as Readonly<Record<string, unknown>>, path);
  const beside = keys.filter((key) => key !== group);
  if (beside.length > 0) {
    const expected = `${group} alone: put the other conditions inside it`;
    const found = `"${beside[0]}" beside "${group}"`;
    return [{ kind: "unknown-key", path: [...path, beside[0]!], key: true, found, expected }];
  }
  const inner = (data as Readonly<Record<string, unknown>>)[group];
  if (group === "not") return checkConditionShape(inner, [...path, group]);
  if (!Array.isArray(inner) || inner.length === 0)
    return wrongType(inner, [...path, group], "a list with at least one condition");
  return inner.flatMap((one, index) => checkConditionShape(one, [...path, group, index]));
}
