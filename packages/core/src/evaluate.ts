import { type RuleFile, ruleFiles, setFiles } from "@trialfit/rules";
import { Evaluation } from "./live/Evaluation.ts";
import type { EvaluationOptions } from "./live/EvaluationOptions.ts";
import type { Report } from "./report/Report.ts";

export interface EvaluateOptions extends EvaluationOptions {
  /** Rules in place of the shipped catalog. Untrusted: checked like any input. */
  readonly rules?: readonly RuleFile[];
}

/** The evaluation of a build by the shipped catalog, or by the rules in its place. */
export function evaluation(input: unknown, options: EvaluateOptions): Evaluation {
  return new Evaluation(input, { rules: options.rules ?? ruleFiles, sets: setFiles }, options);
}

/**
 * Evaluates one build: read → derive → judge → report.
 * @param input a build from `readBuildText`, or plain data in the shape of a build file
 * @throws InputError when the input is not a build; RuleError when a given rule cannot be used; SetError
 * when a set is not known or does not fit the rules; RangeError when there is no such stage, or the
 * number of draws or the seed is not a whole number in its range
 */
export async function evaluate(input: unknown, options: EvaluateOptions = {}): Promise<Report> {
  return evaluation(input, options).finish();
}
