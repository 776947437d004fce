import type { Build } from "../../read/Build.ts";
import type { DimensionSpec } from "../../read/FieldSpec.ts";
import type { DimensionValue } from "../../read/FieldValue.ts";
import { fields } from "../../read/fieldCatalog.ts";
import { nearestWord } from "../../read/nearestWord.ts";
import type { Problem } from "../../read/Problem.ts";
import { countOf } from "../../read/positions.ts";
import { syntaxOf } from "../../read/syntaxOf.ts";
import { formatNumber } from "../../units/formatNumber.ts";
import { parseDimension } from "../../units/parseDimension.ts";
import type { Slot } from "../slotsOf.ts";
import { doubtReading } from "./doubtReading.ts";
import type { Reading } from "./mergeReadings.ts";
import type { FilledRow } from "./readSheet.ts";

/** A row that is not taken, and why. */
export class RowRefusal extends Error {
  readonly problem: Omit<Problem, "file" | "line" | "column">;
  constructor(problem: Omit<Problem, "file" | "line" | "column">) {
    super(problem.found);
    this.problem = problem;
  }
}

/** Ends the taking of a row. @throws RowRefusal */
export const refuse = (field: string, found: string, expected: string, didYouMean?: string): never => {
  throw new RowRefusal({ field, found, expected, ...(didYouMean === undefined ? {} : { didYouMean }) });
};

/** `1.3 dome` in cm3 is written `1.3 cm3 dome` in a build file. */
function withUnit(reading: string, unit: string): string {
  const [, number = reading, words = ""] = /^([-+]?[\d.,/ ]*\d)\s*(.*)$/.exec(reading) ?? [];
  return [number, unit === "1" ? "" : unit, words].filter((word) => word !== "").join(" ");
}

/** The declaration of the dimension that a row names. @throws RowRefusal */
export function specOf(entry: string): DimensionSpec {
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

/** What the build predicts at a slot: while others were measured and this one was not, what was planned for it. */
function predicted(build: Build, slot: Slot): DimensionValue | undefined {
  const value = build.values.get(slot.path);
  return value?.kind === "dimension" ? (value.elsewhere ?? value) : undefined;
}

function checkPlausible(
  reading: number,
  text: string,
  slot: Slot,
  build: Build,
  reason: string,
  reasonAt: string,
): void {
  const value = predicted(build, slot);
  const doubt = value === undefined ? undefined : doubtReading(reading, value);
  if (doubt === undefined || reason !== "") return;
  refuse(
    "reading",
    `${text}, ${doubt.looksLike}`,
    `near ${formatNumber(value!.nominal, value!.unit, { digits: 6 })}, which the build predicts; measure again, or say${reasonAt} why it is right`,
  );
}

/**
 * What a row says, held to the build.
 * @param reasonAt where a reason is given, as a refusal says it
 * @throws RowRefusal for what does not go with the build, or is hardly what was meant; DimensionError for a size that
 * cannot be read
 */
export function readingOf(row: FilledRow, build: Build, reasonAt: string): Reading {
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
  checkPlausible(sign * parsed.nominal, text, slot, build, cells["correction because"], reasonAt);
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
