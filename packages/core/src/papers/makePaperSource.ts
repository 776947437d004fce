import { compareBuilds } from "../compare/compareBuilds.ts";
import { quantities } from "../derive/generated/quantities.ts";
import { type EvaluateOptions, evaluation } from "../evaluate.ts";
import type { Evaluation } from "../live/Evaluation.ts";
import type { StopSignal } from "../live/refine.ts";
import { takeTurns } from "../live/takeTurns.ts";
import type { Build } from "../read/Build.ts";
import type { Report } from "../report/Report.ts";
import { RoomFinder } from "./findRoom.ts";
import type { Override } from "./Paper.ts";
import type { PaperSource } from "./PaperSource.ts";
import { Printer } from "./print/Printer.ts";
import type { UnitChoice } from "./print/paperUnits.ts";
import { restsOnFields } from "./restsOn.ts";

/** How papers are printed and what is let pass: what changes without judging the build again. */
export interface PaperTerms {
  readonly units?: UnitChoice;
  /** By the id of a paper, or of a paper and a part (`order-list piston`): who lets it pass, and why. */
  readonly overrides?: ReadonlyMap<string, Override>;
}

/** What papers are written with, whichever they are. */
export interface SourceOptions extends PaperTerms, Pick<EvaluateOptions, "rules" | "sets"> {
  /** The state before this one, for the change record. */
  readonly before?: Build;
  /** When it is aborted, the work ends with its reason at the next breath. */
  readonly signal?: StopSignal;
}

/** The same source, printed in other units or with other things let pass. */
export function onTerms(source: PaperSource, { units, overrides }: PaperTerms): PaperSource {
  return {
    ...source,
    print: new Printer(units ?? "written", source.values),
    overrides: overrides ?? new Map(),
  };
}

const termsOf = ({ sets, rules }: SourceOptions) => ({
  ...(sets === undefined ? {} : { sets }),
  ...(rules === undefined ? {} : { rules }),
});

/** Gathers what papers are written from out of an evaluation and its report. */
function sourceOf(judging: Evaluation, build: Build, report: Report, options: SourceOptions): PaperSource {
  const { values } = judging;
  const verdicts = new Map(report.verdicts.map((one) => [one.rule, one]));
  const restsOn = restsOnFields(values);
  const holding = judging.rules.filter(({ file }) => verdicts.get(file.id)?.verdict === "holds");
  const rooms = new RoomFinder(values, holding, quantities, restsOn);
  const source: PaperSource = {
    build,
    values,
    report,
    rules: new Map(judging.rules.map((rule) => [rule.file.id, rule])),
    verdicts,
    print: new Printer("written", values),
    overrides: new Map(),
    change: undefined,
    room: (path) => rooms.room(path),
    roomInSteps: (path) => rooms.roomInSteps(path),
    restsOn,
  };
  return onTerms(source, options);
}

/**
 * Evaluates a build and gathers everything that papers are written from.
 * @throws what `evaluate` throws; the reason of the signal when it was aborted
 */
export async function makePaperSource(build: Build, options: SourceOptions): Promise<PaperSource> {
  const { before, signal } = options;
  const terms = termsOf(options);
  const judging = evaluation(build, terms);
  for await (const piece of judging.work()) await takeTurns(piece, signal);
  const source = sourceOf(judging, build, await judging.report(), options);
  return before === undefined ? source : { ...source, change: await compareBuilds(before, build, terms) };
}

/**
 * The same where the build was judged already.
 * @param report of the whole build by the same rules, without a stage
 */
export function judgedPaperSource(build: Build, report: Report, options: SourceOptions): PaperSource {
  return sourceOf(evaluation(build, termsOf(options)), build, report, options);
}

/** A source in which nothing was judged: what papers are, not what they say of this build. */
export async function unjudgedPaperSource(build: Build): Promise<PaperSource> {
  const judging = evaluation(build, {});
  return sourceOf(judging, build, await judging.report(), {});
}
