import { type RuleFile, ruleFiles, sources } from "@trialfit/rules";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { readRule } from "../judge/compileRule.ts";
import { InputError } from "../read/Problem.ts";
import { parseSource, type Source } from "../read/parseSource.ts";
import { isNote } from "./AuthorKind.ts";
import type { AuthorIssue, CheckedRule, RuleContext, RuleProblem } from "./RuleProblem.ts";
import { checkCases } from "./steps/checkCases.ts";
import { checkCaution } from "./steps/checkCaution.ts";
import { checkConditions } from "./steps/checkConditions.ts";
import { checkExamples } from "./steps/checkExamples.ts";
import { checkFilledIn } from "./steps/checkFilledIn.ts";
import { checkOverlap } from "./steps/checkOverlap.ts";
import { checkPlace } from "./steps/checkPlace.ts";
import { checkShape } from "./steps/checkShape.ts";
import { checkSources } from "./steps/checkSources.ts";
import { findSigns } from "./steps/findSigns.ts";

/** The catalog as it is shipped. */
export const shippedContext: RuleContext = { rules: ruleFiles, sources };

/** A rule file that was read, as far as that goes, and what is wrong with it. */
export interface RuleReport {
  /** Present when it has the form of a rule file and can be judged. */
  readonly file?: RuleFile;
  /** In the order of their lines. */
  readonly problems: readonly RuleProblem[];
}

/** Steps that need a rule which can be judged, in this order. */
const steps: readonly ((checked: CheckedRule) => readonly AuthorIssue[])[] = [
  checkSources,
  checkCaution,
  checkConditions,
  checkCases,
  checkExamples,
  checkOverlap,
];

const compiled = new WeakMap<RuleFile, CompiledRule | null>();

/** Other rules that can be judged; each is read once. */
function compiledOthers(rules: readonly RuleFile[]): readonly CompiledRule[] {
  return rules.flatMap((file) => {
    let rule = compiled.get(file);
    if (rule === undefined) {
      const { rule: read, issues } = readRule(file);
      rule = issues.length === 0 ? read : null;
      compiled.set(file, rule);
    }
    return rule === null ? [] : [rule];
  });
}

function placed(issue: AuthorIssue, source: Source): RuleProblem {
  const { kind, path, key, found, expected, didYouMean } = issue;
  const place = source.locate(path, key === true);
  return {
    kind,
    weight: isNote(kind) ? "note" : "error",
    file: source.file,
    line: place?.line ?? 1,
    column: place?.column ?? 1,
    field: path.join("."),
    found,
    expected,
    ...(didYouMean === undefined ? {} : { didYouMean }),
  };
}

/** Problems in the order of their lines. */
export function inOrder(problems: readonly RuleProblem[]): readonly RuleProblem[] {
  return [...problems].sort((a, b) => a.line! - b.line! || a.column! - b.column!);
}

/** Issues at their places in the text, in the order of their lines. */
export function placeIssues(issues: readonly AuthorIssue[], source: Source): readonly RuleProblem[] {
  return inOrder(issues.map((issue) => placed(issue, source)));
}

/**
 * Reads a rule file as its author wrote it and says everything that is wrong with it: each problem with its place,
 * what was found and what is expected. Later steps need what earlier ones check: a file that is not YAML, or has not
 * the form of a rule, is not looked at further.
 * @param text the file
 * @param path the file's name with its folder, as `rules/rods/my-rule.yaml`
 */
export function readRuleFile(text: string, path: string, context: RuleContext = shippedContext): RuleReport {
  const signs = findSigns(text, path);
  if (signs.length > 0) return { problems: signs };
  let source: Source;
  try {
    source = parseSource(text, path);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const problems = error.problems.map((problem) => ({
      ...problem,
      kind: "not-yaml" as const,
      weight: "error" as const,
    }));
    return { problems };
  }
  const problems = (issues: readonly AuthorIssue[]) => placeIssues(issues, source);
  const shape = checkShape(source.data);
  if (shape.length > 0) return { problems: problems(shape) };
  const file = source.data as RuleFile;
  const place = checkPlace(file, path, context);
  const left = checkFilledIn({ file });
  const { rule, issues } = readRule(file);
  if (left.length > 0) return { problems: problems([...place, ...left]) };
  if (issues.length > 0) return { problems: problems([...place, ...issues]) };
  const others = compiledOthers(context.rules.filter((other) => other.id !== file.id));
  const checked: CheckedRule = { file, rule, others, sources: context.sources };
  return { file, problems: problems([...place, ...steps.flatMap((step) => step(checked))]) };
}

/** The problems of one rule file, in the order of their lines. */
export function checkRule(text: string, path: string, context?: RuleContext): readonly RuleProblem[] {
  return readRuleFile(text, path, context).problems;
}
