import { formatIssue, type RuleIssue } from "./RuleIssue.ts";

/** A rule that cannot be used, with everything that is wrong with it. */
export class RuleError extends Error {
  readonly rule: string;
  readonly problems: readonly string[];
  constructor(rule: string, problems: readonly (string | RuleIssue)[]) {
    const lines = [...new Set(problems.map((one) => (typeof one === "string" ? one : formatIssue(one))))];
    super(lines.map((line) => `${rule}: ${line}`).join("\n"));
    this.name = "RuleError";
    this.rule = rule;
    this.problems = lines;
  }
}
