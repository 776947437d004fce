import { unitOf } from "../units/findUnit.ts";
import { formatNumber } from "../units/formatNumber.ts";
import {
  DimensionError,
  type DimensionSyntax,
  describeSyntax,
  parseDimension,
} from "../units/parseDimension.ts";
import type { DimensionSpec, Provenance } from "./FieldSpec.ts";
import type { DimensionValue } from "./FieldValue.ts";
import { syntaxOf } from "./syntaxOf.ts";

/** The object form of a dimension, with what only a measurement can tell. */
export interface DimensionDetail {
  readonly value: string | number;
  readonly tolerance?: string | undefined;
  readonly provenance?: Provenance | undefined;
  readonly instrument?: string | undefined;
  readonly note?: string | undefined;
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

/** The usual tolerance of a field, about a value: a percentage is of that value. */
function usualTolerance(spec: DimensionSpec, nominal: number): number | undefined {
  if (spec.tolerance === undefined) return undefined;
  const share = /^([\d.]+)\s*%$/.exec(spec.tolerance)?.[1];
  if (share !== undefined && spec.unit !== "%") return (Number(share) / 100) * Math.abs(nominal);
  return parseDimension(`0 ${unitOf(spec.unit).symbol} ± ${spec.tolerance}`, { unit: spec.unit }).plus;
}

/**
 * Reads one dimension of a build: text, or an object with value, tolerance, provenance, instrument and note.
 * @throws DimensionError with what was found and what was expected.
 */
export function readDimension(
  raw: string | DimensionDetail,
  spec: DimensionSpec,
  usual: Provenance,
): ReadDimension {
  const detail: DimensionDetail = typeof raw === "string" ? { value: raw } : raw;
  const text = `${detail.value}${detail.tolerance === undefined ? "" : ` ± ${detail.tolerance}`}`;
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
  const fallback = usualTolerance(spec, nominal);
  const minus = parsed.minus ?? fallback ?? 0;
  const plus = parsed.plus ?? fallback ?? 0;
  // A tolerance may reach past what can be (a radius of 0 ± 0.5): the part cannot.
  const [least, most] = rangeOf(spec);
  const low = Math.min(nominal, Math.max(least, nominal - (sign === 1 ? minus : plus)));
  const high = Math.max(nominal, Math.min(most, nominal + (sign === 1 ? plus : minus)));
  const stated = parsed.minus !== undefined;
  const value: DimensionValue = {
    kind: "dimension",
    nominal,
    low,
    high,
    unit: parsed.unit.symbol,
    text,
    provenance: detail.provenance ?? usual,
    toleranceFrom: stated ? "stated" : fallback === undefined ? "none" : "default",
    ...(detail.instrument === undefined ? {} : { instrument: detail.instrument }),
    ...(detail.note === undefined ? {} : { note: detail.note }),
  };
  return { value, place: spec.places === undefined ? undefined : parsed.word };
}
