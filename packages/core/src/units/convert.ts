import { add, multiply, type Rational, toNumber } from "./Rational.ts";
import type { Unit } from "./unitTable.ts";

/** An exact reading in a unit, as SI: the double nearest to the true value (one more rounding where pi enters). */
export function toSi(value: Rational, unit: Unit): number {
  const scaled = toNumber(add(multiply(value, unit.factor), unit.offset));
  return unit.pi === 1 ? scaled * Math.PI : scaled;
}

/** A difference (a tolerance, a temperature rise) as SI: the zero mark of the scale plays no part. */
export function intervalToSi(value: Rational, unit: Unit): number {
  const scaled = toNumber(multiply(value, unit.factor));
  return unit.pi === 1 ? scaled * Math.PI : scaled;
}

/** An SI value as a number of this unit. */
export function fromSi(value: number, unit: Unit): number {
  const scaled = unit.pi === 1 ? value / Math.PI : value;
  return (scaled - toNumber(unit.offset)) / toNumber(unit.factor);
}

/** An SI difference as a number of this unit. */
export function intervalFromSi(value: number, unit: Unit): number {
  return (unit.pi === 1 ? value / Math.PI : value) / toNumber(unit.factor);
}
