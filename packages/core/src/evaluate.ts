import { type RuleFile, ruleFiles, type SetFile, type Use } from "@trialfit/rules";
import { exchangeParts } from "./choose/exchangeParts.ts";
import { quantities } from "./derive/generated/quantities.ts";
import { withDefaults } from "./derive/withDefaults.ts";
import { compileRules } from "./judge/compileRules.ts";
import { withSettlement } from "./judge/howToSettle.ts";
import { judgeBuild } from "./judge/judgeBuild.ts";
import { type Drawing, sampleVerdicts } from "./judge/sampleVerdicts.ts";
import { asOfStage } from "./judge/unmeasured.ts";
import { asBuild } from "./read/asBuild.ts";
import type { Build } from "./read/Build.ts";
import type { Stage } from "./read/FieldSpec.ts";
import { makeReport } from "./report/makeReport.ts";
import type { Report } from "./report/Report.ts";
import { applySet } from "./sets/applySet.ts";

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
  const build = asBuild(input);
  const given = options.rules ?? ruleFiles;
  const set = options.sets === undefined ? undefined : applySet(options.sets, given);
  const values = withDefaults(set?.use === undefined ? build : forUse(build, set.use));
  const every = compileRules(set?.rules ?? given);
  const rules =
    options.stage === undefined ? every : every.filter((rule) => rule.file.stages.includes(options.stage!));
  const more = options.quantities ?? [];
  const { derivations, judged } = await judgeBuild(
    values,
    rules,
    quantities,
    more === "all" ? quantities.keys() : more,
  );
  const settled = judged.map((one) => withSettlement(asOfStage(one, options.stage), quantities));
  const asked = new Set([...rules.flatMap((rule) => rule.facts), ...(more === "all" ? [] : more)]);
  const drawing = options.statistics;
  const drawn =
    drawing === undefined
      ? undefined
      : { drawing, samples: sampleVerdicts(values, rules, quantities, asked, drawing) };
  const exchanges = exchangeParts(values, quantities, settled);
  return makeReport({
    build,
    values,
    derivations,
    judged: settled,
    exchanges,
    stage: options.stage ?? "all",
    rules: every.map((rule) => rule.file.id),
    drawn,
    set,
  });
}

/** The build as if it stated this use. */
function forUse(build: Build, use: Use): Build {
  const values = new Map(build.values);
  values.set("use", { kind: "choice", value: use, provenance: "target" });
  return { ...build, values };
}
