import { compareBuilds } from "../compare/compareBuilds.ts";
import { quantities } from "../derive/generated/quantities.ts";
import { type EvaluateOptions, evaluation } from "../evaluate.ts";
import type { Build } from "../read/Build.ts";
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

/** Evaluates a build and gathers everything that papers are written from. @throws what `evaluate` throws */
export async function makePaperSource(build: Build, options: SourceOptions): Promise<PaperSource> {
  const { sets, rules, before } = options;
  const terms = { ...(sets === undefined ? {} : { sets }), ...(rules === undefined ? {} : { rules }) };
  const judging = evaluation(build, terms);
  const report = await judging.finish();
  const { values } = judging;
  const verdicts = new Map(report.verdicts.map((one) => [one.rule, one]));
  const restsOn = restsOnFields(values);
  const holding = judging.rules.filter(({ file }) => verdicts.get(file.id)?.verdict === "holds");
  const rooms = new RoomFinder(values, holding, quantities, restsOn);
  return {
    build,
    values,
    report,
    rules: new Map(judging.rules.map((rule) => [rule.file.id, rule])),
    verdicts,
    print: new Printer(options.units ?? "written", values),
    overrides: options.overrides ?? new Map(),
    change: before === undefined ? undefined : await compareBuilds(before, build, terms),
    room: (path) => rooms.room(path),
    restsOn,
  };
}
