import type { DimensionSpec } from "../../read/FieldSpec.ts";
import type { DimensionValue } from "../../read/FieldValue.ts";
import { readDimension } from "../../read/readDimension.ts";
import { signWord } from "../../read/signWord.ts";
import { intervalFromSi } from "../../units/convert.ts";
import { unitOf } from "../../units/findUnit.ts";
import { joinDimension } from "../../units/splitDimension.ts";

/** Figures with which a width is written, and with which one that nobody stated is: it came from another unit. */
const DIGITS = 6;
const DIGITS_USUAL = 3;

/** A band may be cut off where the field ends: then the other half says how wide it is. */
function widths({ nominal, low, high }: DimensionValue, [least, most]: readonly [number, number]) {
  const [minus, plus] = [nominal - low, high - nominal];
  return {
    minus: low <= least ? Math.max(minus, plus) : minus,
    plus: high >= most ? Math.max(minus, plus) : plus,
  };
}

/** A width cut off after some figures: what is kept closer is kept as well. */
function cutOff(width: number, digits: number): number {
  const scale = 10 ** (digits - 1 - Math.floor(Math.log10(width)));
  return Math.floor(width * scale * (1 + Number.EPSILON)) / scale;
}

/** `0.05`, or `+0.05/-0.02`, from widths in SI. @param usual whether nobody stated them */
export function toleranceText(minus: number, plus: number, unit: string, usual = false): string {
  const print = (width: number) => {
    const size = Number(Math.abs(intervalFromSi(width, unitOf(unit))).toPrecision(DIGITS));
    return String(usual && size > 0 ? Number(cutOff(size, DIGITS_USUAL).toPrecision(DIGITS)) : size);
  };
  const [down, up] = [print(minus), print(plus)];
  return down === up ? down : `+${up}/-${down}`;
}

/** A number with no fewer decimals than the width beside it: `117.00` beside `12.64`. */
function asFineAs(number: string, width: string): string {
  const [whole, decimals = ""] = number.split(".");
  const least = Math.max(...width.split("/").map((part) => part.split(".")[1]?.length ?? 0));
  return least > 0 ? `${whole}.${decimals.padEnd(least, "0")}` : number;
}

/**
 * A dimension as a build file writes it when it comes to another size and is kept as closely as before.
 * @param number of the dimension's own unit, with sign
 * @param range of the field [SI]
 * @param place the word that says where, if the field has one
 */
export function writeMoved(
  value: DimensionValue,
  spec: DimensionSpec,
  number: string,
  range: readonly [number, number],
  place: string | undefined,
): string {
  const { minus, plus } = widths(value, range);
  const negative = number.startsWith("-");
  const word = signWord(spec, negative ? -1 : 1) ?? place ?? "";
  const turned = spec.signs !== undefined && negative;
  const bare = minus === 0 && plus === 0 && spec.tolerance === undefined;
  const usual = value.toleranceFrom !== "stated";
  const [below, above] = turned ? [plus, minus] : [minus, plus];
  const width = toleranceText(below, above, value.unit, usual);
  const size = spec.signs !== undefined ? number.replace("-", "") : number;
  return joinDimension({
    number: bare ? size : asFineAs(size, width),
    unit: value.unit,
    word,
    tolerance: bare ? "" : width,
  });
}

/** The dimension that this text gives, known from where the other was known. */
export function readMoved(value: DimensionValue, spec: DimensionSpec, text: string): DimensionValue {
  const { nominal, low, high } = readDimension(text, spec, "target").value;
  return { ...value, nominal, low, high, text };
}

/** A dimension that was measured place by place, each place moved by the same. */
export function shiftPlaces(value: DimensionValue, by: number): DimensionValue {
  const shifted = (one: DimensionValue): DimensionValue => ({
    ...one,
    nominal: one.nominal + by,
    low: one.low + by,
    high: one.high + by,
  });
  const { positions, elsewhere } = value;
  return {
    ...shifted(value),
    text: `${value.text}; each moved by ${by}`,
    ...(positions === undefined
      ? {}
      : { positions: Object.fromEntries(Object.entries(positions).map(([at, one]) => [at, shifted(one)])) }),
    ...(elsewhere === undefined ? {} : { elsewhere: shifted(elsewhere) }),
  };
}
