import type { WantedValue } from "../../read/WantedValue.ts";

/** A dimension that is looked for. Bounds and step in SI. */
export interface Wanted extends Pick<WantedValue, "low" | "high" | "step" | "unit" | "place"> {
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
}

/** How far an aim is from being met, in units of its allowance: 0 when met exactly, at most 1 when met. */
export function missOf({ kind, value, allowance }: Aim, reached: number): number {
  const off = (reached - value) / allowance;
  if (kind === "least") return Math.min(0, off);
  if (kind === "most") return Math.max(0, off);
  return off;
}
