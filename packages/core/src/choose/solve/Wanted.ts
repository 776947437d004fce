import type { WantedValue } from "../../read/WantedValue.ts";

/** A dimension that is looked for. Bounds and step in SI. */
export interface Wanted extends Pick<WantedValue, "low" | "high" | "step" | "origin" | "unit" | "place"> {
  /** Path of the field: `piston.compressionHeight`. */
  readonly path: string;
}

export type AimKind = "equal" | "least" | "most";

/** What is wanted of a quantity or of another field, SI. */
export interface Aim {
  /** Id of a quantity. */
  readonly id: string;
  readonly kind: AimKind;
  readonly value: number;
  /** How far from the value is still as wanted (> 0); for `least` and `most` how far on the wrong side. */
  readonly allowance: number;
  /** Whether the allowance was stated; otherwise what the rounding to steps makes of it is allowed as well. */
  readonly stated: boolean;
  /** Whether it was written as a smaller value to a greater one: `value` is their middle. */
  readonly isRange?: boolean;
  /** How far from the value nothing is off at all [SI]: with it the solver asks for less than the value itself; 0 if left out. */
  readonly slack?: number;
}

/** How far a value is on the wrong side of what is wanted [SI], with its sign; 0 where it is on the right one. */
export function wrongBy({ kind, value }: Pick<Aim, "kind" | "value">, reached: number): number {
  const off = reached - value;
  return kind === "least" ? Math.min(0, off) : kind === "most" ? Math.max(0, off) : off;
}

/** How far an aim is from being met, in units of its allowance: 0 when met exactly, at most 1 when met. */
export function missOf(aim: Aim, reached: number): number {
  const { allowance, slack = 0 } = aim;
  const wrong = wrongBy(aim, reached);
  return (Math.sign(wrong) * Math.max(0, Math.abs(wrong) - slack)) / allowance;
}
