import type { RuleFile, SetFile } from "@trialfit/rules";
import { finish } from "./derive/Steps.ts";
import type { Drawing } from "./judge/sampleVerdicts.ts";
import { Evaluation } from "./live/Evaluation.ts";
import type { Stage } from "./read/FieldSpec.ts";
import type { Report } from "./report/Report.ts";

export interface EvaluateOptions {
  /**
   * Judge only the rules of this stage, as it stands then: what is to be measured by it and was not, leaves a rule
   * open. Absent: every rule, by whatever sizes the build gives.
   */
  readonly stage?: Stage;
  /** Rules in place of the shipped catalog. Untrusted: checked like any input. */
  readonly rules?: readonly RuleFile[];
  /**
   * Sets of rules: names of shipped ones, or sets as data; the last is applied, the others may be extended by it.
   * Absent: every rule, for the use that the build states.
   */
  readonly sets?: readonly (string | SetFile)[];
  /**
   * Quantities to compute beside those that the rules ask for: their ids, or `all` of them, which takes some
   * seconds, since many are searched over a whole cycle and all tolerances. Absent: none.
   */
  readonly quantities?: "all" | readonly string[];
  /**
   * Draw so many engines within the tolerances, and say of each rule in how many it holds, and of each quantity that a
   * rule or the list of quantities names how it scatters. The verdicts stay what they are. 1000 engines take up to a
   * minute with every rule of the catalog. Absent: none.
   */
  readonly statistics?: Drawing;
}

/**
 * Evaluates one build: read → derive → judge → report.
 * @param input a build from `readBuildText`, or plain data in the shape of a build file
 * @throws InputError when the input is not a build; RuleError when a given rule cannot be used; SetError
 * when a set is not known or does not fit the rules; RangeError when the
 * number of draws or the seed is not a whole number in its range
 */
export async function evaluate(input: unknown, options: EvaluateOptions = {}): Promise<Report> {
  const evaluation = new Evaluation(input, options);
  for await (const piece of evaluation.work()) finish(piece);
  return evaluation.report();
}
