import type { Build } from "../../read/Build.ts";
import { editBuildText } from "../../read/editBuildText.ts";
import type { DimensionSpec } from "../../read/FieldSpec.ts";
import type { DimensionValue } from "../../read/FieldValue.ts";
import { fieldLabel, fields } from "../../read/fieldCatalog.ts";
import { nearestWord } from "../../read/nearestWord.ts";
import { InputError, type Problem } from "../../read/Problem.ts";
import { parseSource } from "../../read/parseSource.ts";
import { countOf } from "../../read/positions.ts";
import { readBuildText } from "../../read/readBuild.ts";
import { syntaxOf } from "../../read/syntaxOf.ts";
import { withField } from "../../read/withField.ts";
import { formatNumber } from "../../units/formatNumber.ts";
import { DimensionError, parseDimension } from "../../units/parseDimension.ts";
import { placeOf, type Slot } from "../slotsOf.ts";
import { doubtReading } from "./doubtReading.ts";
import { type Entry, mergeReadings, type Reading, readingAt } from "./mergeReadings.ts";
import { type FilledRow, readSheet } from "./readSheet.ts";

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

class RowRefusal extends Error {
  readonly problem: Omit<Problem, "file" | "line" | "column">;
  constructor(problem: Omit<Problem, "file" | "line" | "column">) {
    super(problem.found);
    this.problem = problem;
  }
}

const refuse = (field: string, found: string, expected: string, didYouMean?: string): never => {
  throw new RowRefusal({ field, found, expected, ...(didYouMean === undefined ? {} : { didYouMean }) });
};

/** `1.3 dome` in cm3 is written `1.3 cm3 dome` in a build file. */
function withUnit(reading: string, unit: string): string {
  const [, number = reading, words = ""] = /^([-+]?[\d.,/ ]*\d)\s*(.*)$/.exec(reading) ?? [];
  return [number, unit === "1" ? "" : unit, words].filter((word) => word !== "").join(" ");
}

function specOf(entry: string): DimensionSpec {
  const spec = fields.get(entry)?.spec;
  if (spec?.kind === "dimension") return spec;
  const known = [...fields].filter(([, field]) => field.spec.kind === "dimension").map(([path]) => path);
  return refuse("entry", `"${entry}"`, "the name of a dimension", nearestWord(entry, known));
}

function slotOf({ row }: FilledRow, spec: DimensionSpec, build: Build): Slot {
  const { entry: path, position, height, direction } = row;
  if (spec.per === undefined) {
    if (position !== "") refuse("position", position, "nothing: the engine has this dimension once");
    return { path };
  }
  const count = countOf(spec.per, build.values);
  if (!/^[1-9]\d?$/.test(position) || (count !== undefined && Number(position) > count))
    refuse("position", position === "" ? "nothing" : position, `a number from 1 to ${count ?? 99}`);
  return {
    path,
    position,
    ...(height === "" ? {} : { height }),
    ...(direction === "" ? {} : { direction }),
  };
}

/** Where the build has a value, its size there before the reading. */
function predicted(build: Build, slot: Slot): DimensionValue | undefined {
  const value = build.values.get(slot.path);
  return value?.kind === "dimension" ? value : undefined;
}

function checkPlausible(reading: number, text: string, slot: Slot, build: Build, reason: string): void {
  const value = predicted(build, slot);
  const doubt = value === undefined ? undefined : doubtReading(reading, value);
  if (doubt === undefined || reason !== "") return;
  refuse(
    "reading",
    `${text}, ${doubt.looksLike}`,
    `near ${formatNumber(value!.nominal, value!.unit, { digits: 6 })}, which the build predicts; measure again, or say in "correction because" why it is right`,
  );
}

function readingOf(row: FilledRow, build: Build): Reading {
  const { row: cells } = row;
  const spec = specOf(cells.entry);
  const slot = slotOf(row, spec, build);
  if (cells.unit === "" && spec.unit !== "1") refuse("unit", "nothing", "the unit of the reading");
  const text = withUnit(cells.reading, cells.unit === "" ? "1" : cells.unit);
  const syntax = syntaxOf(spec);
  const parsed = parseDimension(
    text,
    /^[+-]?0*\.?0* /.test(text) ? { ...syntax, wordRequired: false } : syntax,
  );
  const sign = parsed.word === undefined ? 1 : (spec.signs?.[parsed.word] ?? 1);
  checkPlausible(sign * parsed.nominal, text, slot, build, cells["correction because"]);
  const uncertainty = cells.uncertainty === "" ? undefined : withUnit(cells.uncertainty, cells.unit);
  const temperature =
    cells["part temperature"] === ""
      ? undefined
      : withUnit(cells["part temperature"], /[a-z]/i.test(cells["part temperature"]) ? "" : "degC").trim();
  return {
    slot,
    text,
    because: cells["correction because"],
    ...(cells.instrument === "" ? {} : { instrument: cells.instrument }),
    ...(uncertainty === undefined ? {} : { uncertainty }),
    ...(temperature === undefined ? {} : { temperature }),
    ...(cells.joint === "" ? {} : { joint: cells.joint }),
    ...(cells.by === "" ? {} : { by: cells.by }),
    ...(cells.on === "" ? {} : { on: cells.on }),
  };
}

/** What the file says under a path now, as plain data. */
function entryOf(data: unknown, path: string): Entry {
  let at: unknown = data;
  for (const step of path.split("."))
    at = typeof at === "object" && at !== null ? (at as Record<string, unknown>)[step] : undefined;
  if (at === undefined) return {};
  return typeof at === "object" && at !== null ? (at as Entry) : { value: String(at) };
}

/**
 * Takes the readings of a filled sheet into a build file. Nothing that was measured is lost: a reading that differs
 * from one that is there needs a reason, and the one before is kept beside it. A reading that is hardly what was
 * meant is refused with what the build predicts. Rows that are refused leave the others as they are.
 * @param text the build file
 * @param sheet the filled sheet
 * @throws InputError when the build file or the sheet as a whole cannot be read
 */
export function takeReadings(text: string, file: string, sheet: string, sheetFile: string): TakenSheet {
  const build = readBuildText(text, file);
  const { data } = parseSource(text, file);
  const entries = new Map<string, Entry>();
  let current = build;
  const taken: TakenReading[] = [];
  const refused: Problem[] = [];
  let known = 0;
  for (const row of readSheet(sheet, sheetFile)) {
    const place = { file: sheetFile, line: row.line, column: 1 };
    try {
      const reading = readingOf(row, build);
      const { path } = reading.slot;
      const before = entries.get(path) ?? entryOf(data, path);
      const there = readingAt(before, reading.slot);
      if (there === reading.text) {
        known += 1;
        continue;
      }
      if (there !== undefined && reading.because === "")
        refuse(
          "reading",
          `${reading.text}, where ${there} was measured before`,
          'a reason in "correction because": nothing measured is overwritten',
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
