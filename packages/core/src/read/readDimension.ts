import { formatNumber } from "../units/formatNumber.ts";
import {
  DimensionError,
  type DimensionSyntax,
  describeSyntax,
  parseDimension,
} from "../units/parseDimension.ts";
import type { DimensionSpec, Provenance } from "./FieldSpec.ts";
import type { DimensionValue } from "./FieldValue.ts";
import type { Readings } from "./readingSchema.ts";
import { type PositionSize, readPosition } from "./readPosition.ts";
import { syntaxOf } from "./syntaxOf.ts";
import { readTaken, type WrittenTaken } from "./taken.ts";
import { type BandTerms, type UsualBand, usualBand } from "./usualBand.ts";

/** The object form of a dimension, with what only a measurement can tell. */
export interface DimensionDetail extends BandTerms, WrittenTaken {
  readonly value?: string | number | undefined;
  readonly tolerance?: string | undefined;
  readonly provenance?: Provenance | undefined;
  readonly note?: string | undefined;
  readonly readings?: Readings | undefined;
}

export interface ReadDimension {
  readonly value: DimensionValue;
  readonly place: string | undefined;
}

/** Zero needs no word to say which way it points. */
function withoutNeedlessWord(text: string, syntax: DimensionSyntax, spec: DimensionSpec): DimensionSyntax {
  return spec.signs !== undefined && /^[+-]?0*\.?0*(\s|$|[a-z])/i.test(text.trim())
    ? { ...syntax, wordRequired: false }
    : syntax;
}

function rangeOf(spec: DimensionSpec): readonly [least: number, most: number] {
  const [least, most] = spec.range.map((edge) => parseDimension(edge, { unit: spec.unit }).nominal);
  return [least!, most!];
}

function checkRange(spec: DimensionSpec, value: number, text: string, unit: string): void {
  const [least, most] = rangeOf(spec);
  const slack = 1e-12 * Math.max(Math.abs(least), Math.abs(most));
  if (value >= least - slack && value <= most + slack) return;
  throw new DimensionError(
    `${text}, outside what this dimension can be`,
    `between ${formatNumber(least, unit)} and ${formatNumber(most, unit)}; was another unit meant?`,
  );
}

/** A number as it was written, its sign by its word. */
function readNumber(text: string, spec: DimensionSpec) {
  const syntax = syntaxOf(spec);
  const parsed = parseDimension(text, withoutNeedlessWord(text, syntax, spec));
  const sign = parsed.word !== undefined ? (spec.signs?.[parsed.word] ?? 1) : 1;
  if (spec.signs !== undefined && parsed.nominal < 0) {
    throw new DimensionError(
      "a minus sign",
      `${describeSyntax(syntax)}: the word gives the direction, not a sign`,
    );
  }
  const nominal = sign * parsed.nominal;
  checkRange(spec, nominal, text, parsed.unit.symbol);
  return { ...parsed, nominal, sign };
}

/** A tolerance may reach past what can be (a radius of 0 ± 0.5): the part cannot. */
function within(spec: DimensionSpec, nominal: number, low: number, high: number) {
  const [least, most] = rangeOf(spec);
  return {
    nominal,
    low: Math.min(nominal, Math.max(least, low)),
    high: Math.max(nominal, Math.min(most, high)),
  };
}

function isMeasured(detail: DimensionDetail): boolean {
  const { instrument, uncertainty, readings, provenance } = detail;
  const { taken } = about(detail);
  if (taken !== undefined && provenance !== undefined && provenance !== "measured")
    throw new DimensionError(
      `${Object.keys(taken).join(", ")} of something ${provenance}`,
      "provenance: measured, or none of these",
    );
  const measured =
    instrument !== undefined || uncertainty !== undefined || readings !== undefined || taken !== undefined;
  if (measured && provenance !== undefined && provenance !== "measured" && uncertainty !== undefined)
    throw new DimensionError(
      `an uncertainty of something ${provenance}`,
      "provenance: measured, or no uncertainty",
    );
  return provenance === "measured" || (provenance === undefined && measured);
}

function about(detail: DimensionDetail): Pick<DimensionValue, "instrument" | "note" | "taken"> {
  const { instrument, note } = detail;
  const taken = placed(["temperature"], () => readTaken(detail));
  return {
    ...(instrument === undefined ? {} : { instrument }),
    ...(note === undefined ? {} : { note }),
    ...(taken === undefined ? {} : { taken }),
  };
}

function readSingle(detail: DimensionDetail, spec: DimensionSpec, usual: Provenance): ReadDimension {
  const { value, tolerance, uncertainty } = detail;
  if (value === undefined) throw new DimensionError("no value", "a value, or readings");
  const text = `${value}${tolerance === undefined ? "" : ` ± ${tolerance}`}`;
  const { nominal, sign, minus, plus, unit, word } = readNumber(text, spec);
  const stated = minus !== undefined;
  if (stated && uncertainty !== undefined)
    throw new DimensionError("a tolerance and an uncertainty", "one of the two");
  const measured = isMeasured(detail);
  const band: UsualBand = stated
    ? { minus, plus: plus!, from: "stated" }
    : placed(uncertainty === undefined ? [] : ["uncertainty"], () =>
        usualBand(spec, detail, nominal, measured),
      );
  const read: DimensionValue = {
    kind: "dimension",
    ...within(
      spec,
      nominal,
      nominal - (sign === 1 ? band.minus : band.plus),
      nominal + (sign === 1 ? band.plus : band.minus),
    ),
    unit: unit.symbol,
    text: uncertainty === undefined ? text : `${text} ± ${uncertainty}`,
    provenance: measured ? "measured" : (detail.provenance ?? usual),
    toleranceFrom: band.from,
    ...about(detail),
    ...(measured ? { uncertainty: Math.max(band.minus, band.plus) } : {}),
  };
  return { value: read, place: spec.places === undefined ? undefined : word };
}

function readReading(text: string, spec: DimensionSpec): number {
  const { nominal, minus } = readNumber(text, spec);
  if (minus !== undefined)
    throw new DimensionError(
      `a tolerance on a reading: "${text}"`,
      "the reading alone; its uncertainty stands beside the readings",
    );
  return nominal;
}

/** Runs a reader, so that what it refuses says where in the field it stands. */
function placed<T>(path: readonly string[], run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (error instanceof DimensionError) throw new DimensionError(error.message, error.expected, path);
    throw error;
  }
}

function sizedValue(size: PositionSize, detail: DimensionDetail, spec: DimensionSpec): DimensionValue {
  const { minus, from } = usualBand(spec, detail, size.mean, true);
  return {
    kind: "dimension",
    ...within(spec, size.mean, size.least - minus, size.most + minus),
    unit: parseDimension(size.texts[0]!, { ...syntaxOf(spec), wordRequired: false }).unit.symbol,
    text: size.texts.join(", "),
    provenance: "measured",
    toleranceFrom: from,
    ...about(detail),
    uncertainty: minus,
    form: size.form,
  };
}

/** One value for each position that was measured; the value beside the readings, if any, is for the others. */
function readReadings(
  { readings = {}, value, tolerance, ...detail }: DimensionDetail,
  spec: DimensionSpec,
  usual: Provenance,
): ReadDimension {
  if (spec.per === undefined)
    throw new DimensionError("readings by position", "one value: an engine has this dimension once");
  if (Object.keys(readings).length === 0)
    throw new DimensionError("no readings", 'readings by number, such as { "1": 88.51 mm }');
  isMeasured({ ...detail, readings });
  const positions = Object.fromEntries(
    Object.entries(readings).map(([at, one]) => [
      at,
      placed(["readings", at], () =>
        sizedValue(
          readPosition(one, (text) => readReading(text, spec)),
          detail,
          spec,
        ),
      ),
    ]),
  );
  const measured = Object.values(positions);
  const elsewhere =
    value === undefined ? undefined : readSingle({ value, tolerance, made: detail.made }, spec, usual).value;
  const all = elsewhere === undefined ? measured : [...measured, elsewhere];
  const overall: DimensionValue = {
    ...measured[0]!,
    nominal: all.reduce((sum, one) => sum + one.nominal, 0) / all.length,
    low: Math.min(...all.map((one) => one.low)),
    high: Math.max(...all.map((one) => one.high)),
    text: Object.entries(positions)
      .map(([at, one]) => `${at}: ${one.text}`)
      .concat(elsewhere === undefined ? [] : [`elsewhere: ${elsewhere.text}`])
      .join("; "),
    positions,
    ...(elsewhere === undefined ? {} : { elsewhere }),
  };
  const { form: _, ...whole } = overall;
  return { value: whole, place: undefined };
}

/**
 * Reads one dimension of a build: text, or an object with value, tolerance, provenance, instrument, uncertainty,
 * way of making, readings and note.
 * @throws DimensionError with what was found and what was expected.
 */
export function readDimension(
  raw: string | DimensionDetail,
  spec: DimensionSpec,
  usual: Provenance,
): ReadDimension {
  const detail: DimensionDetail = typeof raw === "string" ? { value: raw } : raw;
  return detail.readings === undefined ? readSingle(detail, spec, usual) : readReadings(detail, spec, usual);
}
