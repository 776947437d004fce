import type { DimensionSpec } from "../../packages/core/src/read/FieldSpec.ts";
import { fromSi } from "../../packages/core/src/units/convert.ts";
import { unitOf } from "../../packages/core/src/units/findUnit.ts";
import { parseDimension } from "../../packages/core/src/units/parseDimension.ts";

/** Lowest and highest value that a field can have [SI]. */
export function rangeOf({ range, unit }: DimensionSpec): readonly [least: number, most: number] {
  const [least, most] = range.map((edge) => parseDimension(edge, { unit }).nominal);
  return [least!, most!];
}

/** A value [SI] moved into what the field can be. */
export function intoRange(spec: DimensionSpec, value: number): number {
  const [least, most] = rangeOf(spec);
  return Math.min(most, Math.max(least, value));
}

/** A value [SI] as a build file writes it: in the unit of its field, its sign and its place as words. */
export function fieldText(spec: DimensionSpec, value: number, place?: string): string {
  const unit = unitOf(spec.unit);
  const number = Number(fromSi(value, unit).toPrecision(9));
  const sign = Object.entries(spec.signs ?? {}).find(([, factor]) => factor === (number < 0 ? -1 : 1))?.[0];
  const shown = spec.signs === undefined ? number : Math.abs(number);
  return [String(shown), unit.symbol === "1" ? undefined : unit.symbol, sign, place]
    .filter((word) => word !== undefined)
    .join(" ");
}
