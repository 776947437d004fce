/** A dimension that is looked for. Lengths of bounds and steps in SI. */
export interface Wanted {
  /** Path of the field: `piston.compressionHeight`. */
  readonly path: string;
  readonly low: number;
  readonly high: number;
  /** What can be ordered or machined: whole multiples of it, counted from zero. */
  readonly step: number;
  /** Symbol of the unit in which it is written. */
  readonly unit: string;
  /** The word that the dimension carries, where it has one that never changes. */
  readonly word: string | undefined;
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
}

/** How far an aim is from being met, in units of its allowance: 0 when met exactly, at most 1 when met. */
export function missOf({ kind, value, allowance }: Aim, reached: number): number {
  const off = (reached - value) / allowance;
  if (kind === "least") return Math.min(0, off);
  if (kind === "most") return Math.max(0, off);
  return off;
}
