import { type RuleFile, ruleFiles, setFiles } from "@trialfit/rules";
import { compareBuilds } from "../compare/compareBuilds.ts";
import { quantities } from "../derive/generated/quantities.ts";
import { withDefaults } from "../derive/withDefaults.ts";
import { type EvaluateOptions, evaluate } from "../evaluate.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { compileRules } from "../judge/compileRules.ts";
import type { Build } from "../read/Build.ts";
import { nearestWord } from "../read/nearestWord.ts";
import type { Report } from "../report/Report.ts";
import { applySetTo } from "../sets/applySetTo.ts";
import { RoomFinder } from "./findRoom.ts";
import type { Override, Paper, PaperSet } from "./Paper.ts";
import type { PaperSource } from "./PaperSource.ts";
import { paperIds, paperKinds } from "./paperKinds.ts";
import { Printer } from "./print/Printer.ts";
import type { UnitChoice } from "./print/paperUnits.ts";
import { type SheetRow, sheetRows } from "./print/sheetRows.ts";
import { restsOnFields } from "./restsOn.ts";

export interface PaperOptions extends Pick<EvaluateOptions, "rules" | "sets"> {
  /** Ids of the papers to write; all that the build has something to say on unless given. */
  readonly only?: readonly string[];
  readonly units?: UnitChoice;
  /** What the shop calls this state of the build: `A`, `2`. */
  readonly revision?: string;
  /** The day that is printed, `2026-03-14`. */
  readonly date: string;
  /** The state before this one, for the change record. */
  readonly before?: Build;
  /** By the id of a paper, or of a paper and a part (`order-list piston`): who lets it pass, and why. */
  readonly overrides?: ReadonlyMap<string, Override>;
}

/** A set of papers with the report that they were written from. */
export interface WrittenPapers extends PaperSet {
  readonly report: Report;
  /** The measurement sheet as rows: one for each reading that is asked for. Empty where that paper is not asked for. */
  readonly sheet: readonly SheetRow[];
}

/** Papers that do not exist. */
export class PaperError extends Error {
  override readonly name = "PaperError";
}

function wantedIds(only: readonly string[] | undefined): readonly string[] {
  for (const id of only ?? []) {
    if (paperIds.includes(id)) continue;
    const near = nearestWord(id, paperIds);
    const hint = near === undefined ? "" : `; did you mean ${near}?`;
    throw new PaperError(`no paper is called "${id}"${hint} There are: ${paperIds.join(", ")}.`);
  }
  return paperIds.filter((id) => only === undefined || only.includes(id));
}

function checkOverrides(overrides: ReadonlyMap<string, Override>): void {
  for (const [key, { by, because }] of overrides) {
    const [paper = ""] = key.split(" ");
    if (!paperIds.includes(paper))
      throw new PaperError(`no paper is called "${paper}", which is to be let pass`);
    if (by.trim() === "" || because.trim() === "")
      throw new PaperError(`"${key}" is to be let pass without a name or a reason; both are printed`);
  }
}

/** The rules that a build is judged by. */
function appliedRules({ rules, sets }: PaperOptions): readonly RuleFile[] {
  const catalog = { rules: rules ?? ruleFiles, sets: setFiles };
  return sets === undefined ? catalog.rules : applySetTo(sets, catalog).rules;
}

async function sourceOf(build: Build, options: PaperOptions): Promise<PaperSource> {
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

/**
 * Writes the papers of a build: everything on them comes from the build, the rules and the quantities.
 * @throws PaperError for a paper that does not exist, or one that is let pass without a name and a reason; what
 * `evaluate` throws
 */
export async function writePapers(build: Build, options: PaperOptions): Promise<WrittenPapers> {
  const ids = wantedIds(options.only);
  checkOverrides(options.overrides ?? new Map());
  const source = await sourceOf(build, options);
  const { report } = source;
  const papers = ids.flatMap((id): readonly Paper[] => {
    const paper = paperKinds[id]!(source);
    return paper === undefined ? [] : [paper];
  });
  return {
    report,
    head: {
      build: build.name,
      revision: options.revision ?? "–",
      date: options.date,
      hash: report.build.hash.slice(0, 12),
      rules: `trialfit ${report.trialfit}, ${report.set === undefined ? "whole catalog" : report.set.title}`,
    },
    papers,
    sheet: ids.includes("trial-sheet") ? sheetRows(source) : [],
  };
}
