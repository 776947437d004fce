import { type SourceFile, sourceFile } from "@trialfit/rules";
import { InputError, type Problem } from "../read/Problem.ts";
import { parseSource } from "../read/parseSource.ts";
import { showValue } from "./steps/showValue.ts";

/**
 * Reads a list of sources, as `rules/sources.yaml`.
 * @throws InputError with every problem.
 */
export function readSources(text: string, file: string): Readonly<Record<string, SourceFile>> {
  const source = parseSource(text, file);
  const place = (path: readonly PropertyKey[]): Pick<Problem, "file" | "line" | "column" | "field"> => {
    const at = source.locate(path);
    return { file, line: at?.line, column: at?.column, field: path.join(".") };
  };
  if (typeof source.data !== "object" || source.data === null || Array.isArray(source.data))
    throw new InputError([{ ...place([]), found: showValue(source.data), expected: "sources by their ids" }]);
  const problems = Object.entries(source.data).flatMap(([id, one]) => {
    const result = sourceFile.safeParse(one);
    return result.success
      ? []
      : result.error.issues.map((issue) => ({
          ...place([id, ...issue.path]),
          found: showValue(issue.input ?? one),
          expected: issue.message,
        }));
  });
  if (problems.length > 0) throw new InputError(problems);
  return source.data as Readonly<Record<string, SourceFile>>;
}
