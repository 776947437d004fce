import { ruleFile } from "@trialfit/rules";
import type * as z from "zod";
import type { AuthorIssue } from "../RuleProblem.ts";
import { checkConditionShape } from "./checkConditionShape.ts";
import { describeIssues, valueAt } from "./describeIssues.ts";
import { ruleShapes } from "./ruleShapes.ts";
import { showValue } from "./showValue.ts";

type Issue = z.core.$ZodIssue;
type Path = AuthorIssue["path"];

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
    ...describeIssues(
      result.error.issues.filter((issue) => !within(issue)),
      data,
      ruleShapes,
    ),
    ...conditions.flatMap((path) => checkConditionShape(valueAt(data, path), path)),
  ];
}
