import type { RuleFile, SourceFile } from "@trialfit/rules";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import type { RuleIssue } from "../judge/RuleIssue.ts";
import type { Problem } from "../read/Problem.ts";
import type { AuthorKind } from "./AuthorKind.ts";

/** One thing about a rule file, at its place in the text. */
export interface RuleProblem extends Problem {
  readonly kind: AuthorKind;
  /** An error must be mended; a note is worth knowing. */
  readonly weight: "error" | "note";
}

/** The same at its place in the data, before its line is looked up. */
export type AuthorIssue = RuleIssue<AuthorKind>;

/** What a rule is checked against. */
export interface RuleContext {
  /** The other rules of the catalog; one with the same id in the same system is the rule itself. */
  readonly rules: readonly RuleFile[];
  readonly sources: Readonly<Record<string, SourceFile>>;
}

/** A rule that has the form of one, and can be judged. */
export interface CheckedRule {
  readonly file: RuleFile;
  readonly rule: CompiledRule;
  readonly others: readonly CompiledRule[];
  readonly sources: RuleContext["sources"];
}
