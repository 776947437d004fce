import { ruleFiles, type SetFile, setFile, setFiles } from "@trialfit/rules";
import { checkShape } from "../author/steps/checkShape.ts";
import { describeIssues } from "../author/steps/describeIssues.ts";
import { shapesOf } from "../author/steps/shapesOf.ts";
import { InputError, type Problem } from "../read/Problem.ts";
import { parseSource } from "../read/parseSource.ts";
import { applySet } from "./applySet.ts";
import { checkSet, type SetIssue } from "./checkSet.ts";
import { findChain, SetError } from "./findChain.ts";

const shapes = shapesOf(setFile);

/** Rules of a set have the form of rule files, and are checked like them. */
function rulesIn(data: unknown): readonly unknown[] {
  const rules = (data as { rules?: unknown } | null)?.rules;
  return Array.isArray(rules) ? rules : [];
}

function shapeIssues(data: unknown): readonly SetIssue[] {
  const result = setFile.safeParse(data);
  if (result.success) return [];
  const outside = result.error.issues.filter(
    (issue) => !(issue.path[0] === "rules" && issue.path.length > 1),
  );
  return [
    ...describeIssues(outside, data, shapes),
    ...rulesIn(data).flatMap((rule, index) =>
      checkShape(rule).map((issue) => ({ ...issue, path: ["rules", index, ...issue.path] })),
    ),
  ];
}

function meaningIssues(set: SetFile, known: readonly SetFile[]): readonly SetIssue[] {
  try {
    const chain = findChain(set, known);
    const base = chain.at(-2);
    return checkSet(set, base === undefined ? ruleFiles : applySet([...known, base]).rules);
  } catch (error) {
    if (!(error instanceof SetError)) throw error;
    const message = error.message.replace(`${error.set}: `, "");
    return [
      {
        path: ["extends"],
        found: `a set that ${message}`,
        expected: "the id of a set that is shipped or given",
      },
    ];
  }
}

/**
 * Reads a set of rules (YAML or JSON).
 * @param text the file's text
 * @param file its name, for messages
 * @param others sets beside the shipped ones that it may extend
 * @throws InputError with every problem: file, line, column, field, found, expected
 */
export function readSetText(text: string, file: string, others: readonly SetFile[] = []): SetFile {
  const source = parseSource(text, file);
  const set = source.data as SetFile;
  const shape = shapeIssues(source.data);
  const issues = shape.length > 0 ? shape : meaningIssues(set, [...others, ...setFiles]);
  if (issues.length === 0) return set;
  const problems = issues.map(({ path, key, found, expected, didYouMean }): Problem => {
    const place = source.locate(path, key === true);
    return {
      file,
      line: place?.line ?? 1,
      column: place?.column ?? 1,
      field: path.join("."),
      found,
      expected,
      ...(didYouMean === undefined ? {} : { didYouMean }),
    };
  });
  throw new InputError(problems.sort((a, b) => a.line! - b.line! || a.column! - b.column!));
}
