import { intervalFromSi, intervalToSi } from "../units/convert.ts";
import { unitOf } from "../units/findUnit.ts";
import { parseDimension } from "../units/parseDimension.ts";
import { rationalFromDecimal } from "../units/Rational.ts";
import type { DimensionSpec } from "./FieldSpec.ts";

/** Steps in which parts are ordered, machined or set, by the unit of the field: common practice. */
const ordinarySteps: Readonly<Record<string, string>> = {
  mm: "0.05",
  um: "0.1",
  cm3: "0.1",
  g: "1",
  deg: "0.5",
  rpm: "50",
  bar: "0.5",
  kW: "1",
  "N m": "1",
  N: "5",
  MPa: "10",
  degC: "1",
  "%": "1",
  "1": "0.01",
};
/** Steps over the whole range of a field of any other unit. */
const STEPS = 1000;

/** A step as a decimal of a unit, and how many figures after the point write it. */
export interface OrderStep {
  /** 1, 2 or 5 times a power of ten, in `unit`. */
  readonly size: number;
  readonly decimals: number;
  readonly unit: string;
  /** [SI], greater than zero. */
  readonly si: number;
}

/** The greatest 1, 2 or 5 times a power of ten that is not above a number. */
function roundDown(number: number, unit: string): OrderStep {
  const slack = number * (1 + 1e-9);
  const power = Math.floor(Math.log10(slack));
  const digit = [5, 2, 1].find((one) => one * 10 ** power <= slack)!;
  const text = `${digit}e${power}`;
  const decimals = Math.max(0, -power);
  return { size: Number(text), decimals, unit, si: intervalToSi(rationalFromDecimal(text)!, unitOf(unit)) };
}

function ordinaryStep(spec: DimensionSpec): number {
  const ordinary = ordinarySteps[spec.unit];
  if (ordinary !== undefined) return intervalToSi(rationalFromDecimal(ordinary)!, unitOf(spec.unit));
  const [least, most] = spec.range.map((edge) => parseDimension(edge, { unit: spec.unit }).nominal);
  return (most! - least!) / STEPS;
}

/**
 * The step in which a dimension is ordered, machined or set: what is usual for its unit, or finer where the dimension
 * is kept finer than that.
 * @param unit in which it is written
 * @param kept half of the width within which it is kept [SI]; 0 where that is not known
 */
export function orderStep(spec: DimensionSpec, unit: string, kept: number): OrderStep {
  const ordinary = ordinaryStep(spec);
  const step = kept > 0 ? Math.min(ordinary, kept) : ordinary;
  return roundDown(intervalFromSi(step, unitOf(unit)), unit);
}

/** The example of a step for a field that has none stated: `0.05 mm`. */
export function exampleStep({ unit }: DimensionSpec): string {
  return `${ordinarySteps[unit] ?? "1"}${unit === "1" ? "" : ` ${unit}`}`;
}
