import { type RuleFile, ruleFiles, setFiles } from "@trialfit/rules";
import { compareBuilds } from "../compare/compareBuilds.ts";
import { quantities } from "../derive/generated/quantities.ts";
import { withDefaults } from "../derive/withDefaults.ts";
import { type EvaluateOptions, evaluate } from "../evaluate.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { compileRules } from "../judge/compileRules.ts";
import type { Build } from "../read/Build.ts";
import { applySetTo } from "../sets/applySetTo.ts";
import { RoomFinder } from "./findRoom.ts";
import type { Override } from "./Paper.ts";
import type { PaperSource } from "./PaperSource.ts";
import { Printer } from "./print/Printer.ts";
import type { UnitChoice } from "./print/paperUnits.ts";
import { restsOnFields } from "./restsOn.ts";

/** What papers are written with, whichever they are. */
export interface SourceOptions extends Pick<EvaluateOptions, "rules" | "sets"> {
  readonly units?: UnitChoice;
  /** The state before this one, for the change record. */
  readonly before?: Build;
  /** By the id of a paper, or of a paper and a part (`order-list piston`): who lets it pass, and why. */
  readonly overrides?: ReadonlyMap<string, Override>;
}

/** The rules that a build is judged by. */
function appliedRules({ rules, sets }: SourceOptions): readonly RuleFile[] {
  const catalog = { rules: rules ?? ruleFiles, sets: setFiles };
  return sets === undefined ? catalog.rules : applySetTo(sets, catalog).rules;
}

/** Evaluates a build and gathers everything that papers are written from. @throws what `evaluate` throws */
export async function makePaperSource(build: Build, options: SourceOptions): Promise<PaperSource> {
  const { sets, rules, before } = options;
  const terms = { ...(sets === undefined ? {} : { sets }), ...(rules === undefined ? {} : { rules }) };
  const report = await evaluate(build, terms);
  const values = withDefaults(build);
  const compiled: ReadonlyMap<string, CompiledRule> = new Map(
    compileRules(appliedRules(options)).map((rule) => [rule.file.id, rule]),
  );
  const verdicts = new Map(report.verdicts.map((one) => [one.rule, one]));
  const restsOn = restsOnFields(values);
  const holding = [...compiled.values()].filter(({ file }) => verdicts.get(file.id)?.verdict === "holds");
  const rooms = new RoomFinder(values, holding, quantities, restsOn);
  return {
    build,
    values,
    report,
    rules: compiled,
    verdicts,
    quantities: new Map(report.quantities.map((one) => [one.id, one])),
    print: new Printer(options.units ?? "written", values),
    overrides: options.overrides ?? new Map(),
    change: before === undefined ? undefined : await compareBuilds(before, build, terms),
    room: (path) => rooms.room(path),
    restsOn,
  };
}
