import type { Build } from "../../read/Build.ts";
import { editBuildText } from "../../read/editBuildText.ts";
import { fieldLabel } from "../../read/fieldCatalog.ts";
import { InputError, type Problem } from "../../read/Problem.ts";
import { parseSource } from "../../read/parseSource.ts";
import { countOf } from "../../read/positions.ts";
import { readBuildText } from "../../read/readBuild.ts";
import { withField } from "../../read/withField.ts";
import { DimensionError } from "../../units/parseDimension.ts";
import { placeOf, type Slot } from "../slotsOf.ts";
import { entryAt } from "./entryAt.ts";
import { type Entry, mergeReadings, readingAt } from "./mergeReadings.ts";
import { RowRefusal, readingOf, refuse, specOf } from "./readingOf.ts";
import type { FilledRow } from "./readSheet.ts";

/** One reading that was taken into a build. */
export interface TakenReading extends Slot {
  readonly label: string;
  readonly text: string;
  /** What stood there before, where it was corrected. */
  readonly instead?: string;
}

/** What came of a filled sheet. */
export interface TakenSheet {
  /** The build file with the readings in it. */
  readonly text: string;
  readonly build: Build;
  readonly taken: readonly TakenReading[];
  /** Rows whose reading stands in the build already. */
  readonly known: number;
  /** Rows that were not taken, each with its line and the reason. */
  readonly refused: readonly Problem[];
}

/**
 * Takes filled rows of a measurement sheet into a build file. Nothing that was measured is lost: a reading that differs
 * from one that is there needs a reason, and the one before is kept beside it. A reading that is hardly what was
 * meant is refused with what the build predicts. Rows that are refused leave the others as they are.
 * @param text the build file
 * @param rows those that have a reading
 * @param sheetFile how the sheet is named where a row is refused
 * @param reasonAt where a reason is given, as a refusal says it
 * @throws InputError when the build file cannot be read
 */
export function takeRows(
  text: string,
  file: string,
  rows: readonly FilledRow[],
  sheetFile: string,
  reasonAt = ' in "correction because"',
): TakenSheet {
  const build = readBuildText(text, file);
  const { data } = parseSource(text, file);
  const entries = new Map<string, Entry>();
  let current = build;
  const taken: TakenReading[] = [];
  const refused: Problem[] = [];
  let known = 0;
  for (const row of rows) {
    const place = { file: sheetFile, line: row.line, column: 1 };
    try {
      const reading = readingOf(row, build, reasonAt);
      const { path } = reading.slot;
      const before = entries.get(path) ?? entryAt(data, path);
      const there = readingAt(before, reading.slot);
      if (there === reading.text) {
        known += 1;
        continue;
      }
      if (there !== undefined && reading.because === "")
        refuse(
          "reading",
          `${reading.text}, where ${there} was measured before`,
          `a reason${reasonAt}: nothing measured is overwritten`,
        );
      const spec = specOf(path);
      const places = spec.per === undefined ? undefined : countOf(spec.per, build.values);
      const after = mergeReadings(before, reading, there, places);
      // Each row is read into the build at once, so that one that does not go with it is named by its line.
      current = withField(current, path, after);
      entries.set(path, after);
      const at = placeOf(reading.slot);
      taken.push({
        ...reading.slot,
        label: at === "" ? fieldLabel(path) : `${fieldLabel(path)}, ${at}`,
        text: reading.text,
        ...(there === undefined ? {} : { instead: there }),
      });
    } catch (error) {
      refused.push({ ...place, ...problemOf(error) });
    }
  }
  const edits = [...entries].map(([path, value]) => ({ path, value }));
  const written = editBuildText(text, edits, file);
  return { text: written, build: readBuildText(written, file), taken, known, refused };
}

function problemOf(error: unknown): Omit<Problem, "file" | "line" | "column"> {
  if (error instanceof RowRefusal) return error.problem;
  if (error instanceof DimensionError)
    return { field: "reading", found: error.message, expected: error.expected };
  if (error instanceof InputError) {
    const { field, found, expected } = error.problems[0]!;
    return { field, found, expected };
  }
  throw error;
}
