import type { RuleExample } from "@trialfit/rules";
import { parseSource } from "../read/parseSource.ts";
import type { AuthorKind } from "./AuthorKind.ts";
import { adviseRule } from "./adviseRule.ts";
import { inOrder, placeIssues, type RuleReport, readRuleFile } from "./checkRule.ts";
import type { Mutant } from "./Mutant.ts";
import type { AuthorIssue, RuleContext, RuleProblem } from "./RuleProblem.ts";
import type { RuleScore } from "./scoreRule.ts";

/** Everything that can be said of a rule file. */
export interface RuleReview extends RuleReport {
  /** Present when the rule can be judged, its examples can be read, and their verdicts agree with it. */
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

/** Kinds of problem after which what lies inside the same part needs no words of its own. */
const TELLS_OF_ITS_PARTS: ReadonlySet<AuthorKind> = new Set([
  "case-never-applies",
  "case-changes-nothing",
  "says-nothing-new",
  "always-true",
  "contradiction",
]);

/** Needless parts, without those inside a part that is needless as a whole or was said to be. */
function outermost(needless: readonly Mutant[], problems: readonly RuleProblem[]): readonly Mutant[] {
  const said = problems.filter(({ kind }) => TELLS_OF_ITS_PARTS.has(kind)).map(({ field }) => field);
  const whole = needless
    .filter(({ kind }) => kind === "case-dropped" || kind === "member-dropped")
    .map(({ path }) => path.join("."));
  return needless.filter((mutant) => {
    const field = mutant.path.join(".");
    const isIn = (part: string) => field.startsWith(`${part}.`);
    return !whole.some(isIn) && !said.some((part) => part === field || isIn(part));
  });
}

/** Kinds of problem before which slips are not looked for: they would only be what follows from these. */
const FIRST: ReadonlySet<AuthorKind> = new Set(["unreadable-example", "wrong-verdict"]);

/** Checks a rule file and scores its examples. */
export function reviewRule(text: string, path: string, context?: RuleContext): RuleReview {
  const report = readRuleFile(text, path, context);
  const isEarly = report.problems.some(({ kind }) => FIRST.has(kind));
  if (report.file === undefined || isEarly) return { ...report, add: [] };
  const { score, add, needless } = adviseRule(report.file);
  const isNeedless = new Set(needless);
  const told = new Set(outermost(needless, report.problems));
  const slips = score.survivors
    .filter((mutant) => !isNeedless.has(mutant) || told.has(mutant))
    .map(slipOf(isNeedless));
  const problems = inOrder([...report.problems, ...placeIssues(slips, parseSource(text, path))]);
  return { ...report, problems, score, add };
}
