import { type RuleFile, ruleFiles } from "@trialfit/rules";
import { deriveAll } from "./derive/deriveAll.ts";
import { quantities } from "./derive/generated/quantities.ts";
import { withDefaults } from "./derive/withDefaults.ts";
import type { CompiledRule } from "./judge/CompiledRule.ts";
import { compileRules } from "./judge/compileRules.ts";
import { judgeAll } from "./judge/judgeAll.ts";
import { lookupOf } from "./judge/lookupOf.ts";
import type { Build } from "./read/Build.ts";
import type { Stage } from "./read/buildSchema.ts";
import { readBuild } from "./read/readBuild.ts";
import { makeReport } from "./report/makeReport.ts";
import type { Report } from "./report/Report.ts";

export interface EvaluateOptions {
  /** Judge only the rules of this stage. Absent: every rule. */
  readonly stage?: Stage;
  /** Rules in place of the shipped catalog. Untrusted: checked like any input. */
  readonly rules?: readonly RuleFile[];
  /**
   * Quantities to compute beside those that the rules ask for: their ids, or `all` of them, which takes some
   * seconds, since many are searched over a whole cycle and all tolerances. Absent: none.
   */
  readonly quantities?: "all" | readonly string[];
}

/**
 * Evaluates one build: read → derive → judge → report.
 * @param input a build from `readBuildText`, or plain data in the shape of a build file
 * @throws InputError when the input is not a build; RuleError when a given rule cannot be used
 */
export async function evaluate(input: unknown, options: EvaluateOptions = {}): Promise<Report> {
  const build = isBuild(input) ? input : readBuild(input);
  const values = withDefaults(build);
  const every = compileRules(options.rules ?? ruleFiles);
  const rules =
    options.stage === undefined ? every : every.filter((rule) => rule.file.stages.includes(options.stage!));
  const more = options.quantities ?? [];
  const derivations = deriveAll(
    values,
    quantities,
    more === "all" ? quantities.keys() : new Set([...askedBy(rules), ...more]),
  );
  const verdicts = await judgeAll(rules, lookupOf(values, derivations));
  return makeReport({ build, values, rules, derivations, verdicts, stage: options.stage ?? "all" });
}

/** What the rules ask for. */
function askedBy(rules: readonly CompiledRule[]): ReadonlySet<string> {
  return new Set(rules.flatMap((rule) => rule.facts).filter((fact) => quantities.has(fact)));
}

function isBuild(input: unknown): input is Build {
  return typeof input === "object" && input !== null && (input as Build).values instanceof Map;
}
