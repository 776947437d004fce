import type { RuleExample } from "@trialfit/rules";
import { parseSource } from "../read/parseSource.ts";
import { adviseRule } from "./adviseRule.ts";
import { placeIssues, type RuleReport, readRuleFile } from "./checkRule.ts";
import type { Mutant } from "./Mutant.ts";
import type { AuthorIssue, RuleContext, RuleProblem } from "./RuleProblem.ts";
import type { RuleScore } from "./scoreRule.ts";

/** Everything that can be said of a rule file. */
export interface RuleReview extends RuleReport {
  /** Present when the rule can be judged and its examples be read. */
  readonly score?: RuleScore;
  /** Examples that would make the rule's examples notice every slip. */
  readonly add: readonly RuleExample[];
}

function slipOf(needless: ReadonlySet<Mutant>): (mutant: Mutant) => AuthorIssue {
  return (mutant) =>
    needless.has(mutant)
      ? {
          kind: "needless-part",
          path: mutant.path,
          found: `a part that changes no verdict (${mutant.change}: nothing tells the two apart)`,
          expected: "the rule without it",
        }
      : {
          kind: "unnoticed-slip",
          path: mutant.path,
          found: `no example that notices the slip: ${mutant.change}`,
          expected: "one more example",
        };
}

/** Checks a rule file and scores its examples. */
export function reviewRule(text: string, path: string, context?: RuleContext): RuleReview {
  const report = readRuleFile(text, path, context);
  const unreadable = report.problems.some((problem) => problem.kind === "unreadable-example");
  if (report.file === undefined || unreadable) return { ...report, add: [] };
  const { score, add, needless } = adviseRule(report.file);
  const slips = score.survivors.map(slipOf(new Set(needless)));
  const problems: readonly RuleProblem[] = [
    ...report.problems,
    ...placeIssues(slips, parseSource(text, path)),
  ];
  return { ...report, problems, score, add };
}
