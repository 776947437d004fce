import type { Build } from "../read/Build.ts";
import { parseSource } from "../read/parseSource.ts";
import type { Report } from "../report/Report.ts";
import { judgedPaperSource, type SourceOptions } from "./makePaperSource.ts";
import type { PaperSource } from "./PaperSource.ts";
import { type SheetRow, sheetRows } from "./print/sheetRows.ts";
import { placeOf, type Slot } from "./slotsOf.ts";
import { entryAt } from "./takeIn/entryAt.ts";
import { readingAt } from "./takeIn/mergeReadings.ts";

/** One place where a reading is taken. */
export interface PlannedPlace {
  /** The row of the measurement sheet, to be filled in and handed to `takeRows`. Its limits stand in `limitsOf`. */
  readonly row: SheetRow;
  /** `cylinder 3, top, across`; empty where the engine has the dimension once. */
  readonly place: string;
  /** What was measured here, as the build file says it. */
  readonly reading?: string;
}

/** One dimension to be measured, with its places. */
export interface PlannedDimension {
  readonly path: string;
  readonly places: readonly PlannedPlace[];
  /** Ids of the rules that rest on it. */
  readonly rules: readonly string[];
}

/** What is to be measured at the trial assembly, in the order of the measurement sheet. */
export type MeasuringPlan = readonly PlannedDimension[];

function slotOf({ entry: path, position, height, direction }: SheetRow): Slot {
  return {
    path,
    ...(position === "" ? {} : { position }),
    ...(height === "" ? {} : { height }),
    ...(direction === "" ? {} : { direction }),
  };
}

/** Values with what was planned in the place of what was measured at some places only: it goes on being predicted. */
function asPlanned({ values }: PaperSource): PaperSource["values"] {
  return new Map(
    [...values].map(([path, value]) => [
      path,
      value.kind === "dimension" ? (value.elsewhere ?? value) : value,
    ]),
  );
}

/**
 * The measurement sheet as something to fill in on a screen: its rows, by dimension, with what was measured already.
 * @param text the build file
 * @param build read from it
 * @param report of the whole build, without a stage
 */
export function measuringPlan(
  text: string,
  build: Build,
  report: Report,
  options: SourceOptions = {},
): MeasuringPlan {
  const source = judgedPaperSource(build, report, options);
  const { data } = parseSource(text, build.name);
  const byPath = new Map<string, SheetRow[]>();
  for (const row of sheetRows({ ...source, values: asPlanned(source), room: () => ({ rules: 0 }) }))
    byPath.set(row.entry, [...(byPath.get(row.entry) ?? []), row]);
  return [...byPath].map(([path, rows]) => ({
    path,
    places: rows.map((row) => {
      const slot = slotOf(row);
      const reading = readingAt(entryAt(data, path), slot);
      return { row, place: placeOf(slot), ...(reading === undefined ? {} : { reading }) };
    }),
    rules: [...source.rules.values()].filter((rule) => source.restsOn(rule, path)).map(({ file }) => file.id),
  }));
}
