/**
 * The evaluator alone, for pages: it takes the rules as data, which a page can fetch beside it, and carries neither
 * them nor the reading of YAML.
 */
import { Evaluation } from "./live/Evaluation.ts";
import type { EvaluationOptions } from "./live/EvaluationOptions.ts";
import { type Refinement, refine, type StopSignal } from "./live/refine.ts";
import type { Report } from "./report/Report.ts";
import type { RuleCatalog } from "./sets/applySetTo.ts";

export { quantities } from "./derive/generated/quantities.ts";
export type { EvaluationOptions } from "./live/EvaluationOptions.ts";
export type { Refinement, StopSignal } from "./live/refine.ts";
export type { Build } from "./read/Build.ts";
export { type Field, fieldLabel, fields } from "./read/fieldCatalog.ts";
export { formatProblem, InputError, type Problem } from "./read/Problem.ts";
export { readBuild } from "./read/readData.ts";
export { withField } from "./read/withField.ts";
export type { Report, ReportVerdict } from "./report/Report.ts";
export type { PendingRule, ReportPending } from "./report/ReportPending.ts";
export type { RuleCatalog } from "./sets/applySetTo.ts";
export { formatNumber } from "./units/formatNumber.ts";

/**
 * Evaluates one build, as `evaluate` of the main entry does.
 * @param input a build from `readBuild` or `withField`, or plain data in the shape of a build file
 * @param catalog rules to judge by and sets that can be named, as in `catalog.json` of the rules; untrusted
 */
export async function evaluate(
  input: unknown,
  catalog: RuleCatalog,
  options: EvaluationOptions = {},
): Promise<Report> {
  return new Evaluation(input, catalog, options).finish();
}

/** Evaluates one build and says soon what is known, as `refineBuild` of the main entry does. */
export function refineBuild(
  input: unknown,
  catalog: RuleCatalog,
  options: EvaluationOptions & { readonly signal?: StopSignal } = {},
): AsyncGenerator<Refinement, void, void> {
  return refine(() => new Evaluation(input, catalog, options), options.signal);
}
