import { takeTurns } from "../live/takeTurns.ts";
import type { Build } from "../read/Build.ts";
import { nearestWord } from "../read/nearestWord.ts";
import type { Report } from "../report/Report.ts";
import { makePaperSource, onTerms, type PaperTerms, type SourceOptions } from "./makePaperSource.ts";
import type { Override, Paper, PaperSet } from "./Paper.ts";
import type { PaperSource } from "./PaperSource.ts";
import { paperIds, paperKinds } from "./paperKinds.ts";
import { type SheetRow, sheetRows } from "./print/sheetRows.ts";

export interface PaperOptions extends SourceOptions {
  /** Ids of the papers to write; all that the build has something to say on unless given. */
  readonly only?: readonly string[];
  /** What the shop calls this state of the build: `A`, `2`. */
  readonly revision?: string;
  /** The day that is printed, `2026-03-14`. */
  readonly date: string;
  /** Hears how far it is. */
  readonly told?: (progress: PaperProgress) => void;
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

/** How far the writing of papers is. */
export interface PaperProgress {
  /** Sizes whose room was found, of those that the papers ask for. Absent while the build is still being judged. */
  readonly rooms?: { readonly found: number; readonly of: number };
}

/** Which papers are written from a source, and what is printed at their head. */
export type WritingOptions = PaperTerms &
  Pick<PaperOptions, "only" | "revision" | "date" | "signal" | "told">;

/** Paths of the dimensions whose room some papers ask for. */
function roomsAsked(source: PaperSource, ids: readonly string[]): readonly string[] {
  const asked = new Set<string>();
  const room = (path: string) => {
    asked.add(path);
    return { rules: 0 };
  };
  const listening = { ...source, room };
  for (const id of ids) paperKinds[id]!(listening);
  return [...asked];
}

/**
 * Writes papers from a source. Where the room of a dimension takes long, others have their turn.
 * @throws PaperError as `writePapers` does; the reason of the signal when it was aborted
 */
export async function writeFrom(given: PaperSource, options: WritingOptions): Promise<WrittenPapers> {
  const ids = wantedIds(options.only);
  checkOverrides(options.overrides ?? new Map());
  const source = onTerms(given, options);
  const rooms = roomsAsked(source, ids);
  for (const [found, path] of rooms.entries()) {
    options.told?.({ rooms: { found, of: rooms.length } });
    await takeTurns(source.roomInSteps(path), options.signal);
  }
  const { report } = source;
  const papers = ids.flatMap((id): readonly Paper[] => {
    const paper = paperKinds[id]!(source);
    return paper === undefined ? [] : [paper];
  });
  return {
    report,
    head: {
      build: source.build.name,
      revision: options.revision ?? "–",
      date: options.date,
      hash: report.build.hash.slice(0, 12),
      rules: `trialfit ${report.trialfit}, ${report.set === undefined ? "whole catalog" : report.set.title}`,
    },
    papers,
    sheet: ids.includes("trial-sheet") ? sheetRows(source) : [],
  };
}

/**
 * Writes the papers of a build: everything on them comes from the build, the rules and the quantities.
 * @throws PaperError for a paper that does not exist, or one that is let pass without a name and a reason; what
 * `evaluate` throws; the reason of the signal when it was aborted
 */
export async function writePapers(build: Build, options: PaperOptions): Promise<WrittenPapers> {
  wantedIds(options.only);
  checkOverrides(options.overrides ?? new Map());
  options.told?.({});
  return writeFrom(await makePaperSource(build, options), options);
}
