import { instruments } from "../tables/instruments.ts";
import { toleranceWidth } from "../tables/toleranceGrades.ts";
import { type WayOfMakingId, waysOfMaking } from "../tables/waysOfMaking.ts";
import { sameDimensions, unitOf } from "../units/findUnit.ts";
import { DimensionError, parseDimension } from "../units/parseDimension.ts";
import type { DimensionSpec } from "./FieldSpec.ts";
import type { ToleranceOrigin } from "./FieldValue.ts";

/** What a build says of how a dimension was made or measured. */
export interface BandTerms {
  readonly instrument?: string | undefined;
  /** Expanded uncertainty of one reading (k = 2), as text with unit. */
  readonly uncertainty?: string | undefined;
  readonly made?: WayOfMakingId | undefined;
}

/** Distances from nominal, SI. */
export interface UsualBand {
  readonly minus: number;
  readonly plus: number;
  readonly from: ToleranceOrigin;
}

/** A letter, or a sign that stands for a unit. */
const HAS_UNIT = /[^\d\s.,/+-]/;

const both = (width: number, from: ToleranceOrigin): UsualBand => ({ minus: width, plus: width, from });

/** A width with its unit, which must be of the field's kind. */
function width(text: string, spec: DimensionSpec): number {
  return parseDimension(`0 ${unitOf(spec.unit).symbol} ± ${text}`, { unit: spec.unit }).plus!;
}

function byInstrument(spec: DimensionSpec, name: string): UsualBand | undefined {
  const known = Object.hasOwn(instruments, name) ? instruments[name] : undefined;
  if (known === undefined) return undefined;
  const unit = known.uncertainty.replace(/^[\d.]+\s*/, "");
  if (!sameDimensions(unitOf(unit).dimensions, unitOf(spec.unit).dimensions))
    throw new DimensionError(
      `a ${name}, which measures something else`,
      "the instrument that it was measured with",
    );
  return both(width(known.uncertainty, spec), "instrument");
}

function byMaking(spec: DimensionSpec, made: WayOfMakingId, nominal: number): UsualBand | undefined {
  if (!sameDimensions(unitOf("mm").dimensions, unitOf(spec.unit).dimensions))
    throw new DimensionError(
      `the way of making "${made}"`,
      "a length, for which the way of making gives a tolerance",
    );
  const zone = toleranceWidth(waysOfMaking[made].grade, Math.abs(nominal));
  return zone === undefined ? undefined : both(zone / 2, "making");
}

/** The usual tolerance of the field; a percentage is of the value. */
function byField(spec: DimensionSpec, nominal: number): UsualBand {
  if (spec.tolerance === undefined) return both(0, "none");
  const share = /^([\d.]+)\s*%$/.exec(spec.tolerance)?.[1];
  if (share !== undefined && spec.unit !== "%")
    return both((Number(share) / 100) * Math.abs(nominal), "default");
  return both(width(spec.tolerance, spec), "default");
}

/**
 * The band of a value that states none: for a measured one the uncertainty of its instrument, for others what the
 * way of making keeps, and at last the usual tolerance of the field.
 * @throws DimensionError for an instrument or a way of making that does not fit the field
 */
export function usualBand(
  spec: DimensionSpec,
  { instrument, uncertainty, made }: BandTerms,
  nominal: number,
  measured: boolean,
): UsualBand {
  if (uncertainty !== undefined) {
    if (!HAS_UNIT.test(uncertainty) && unitOf(spec.unit).symbol !== "1")
      throw new DimensionError(
        "a number without a unit",
        `an uncertainty with its unit, such as 0.005 ${spec.unit}`,
      );
    return both(width(uncertainty, spec), "stated");
  }
  const special = measured
    ? instrument === undefined
      ? undefined
      : byInstrument(spec, instrument)
    : made === undefined
      ? undefined
      : byMaking(spec, made, nominal);
  return special ?? byField(spec, nominal);
}
