import type { Provenance } from "./FieldSpec.ts";

/**
 * Where the band of a dimension comes from: stated in the build, the usual uncertainty of the instrument, the grade
 * that the way of making keeps, the field's own usual tolerance, or nothing.
 */
export type ToleranceOrigin = "stated" | "instrument" | "making" | "default" | "none";

/** What readings at several heights and in several directions tell beside the size, SI. */
export interface Form {
  /** Greatest difference between the mean sizes of two heights. */
  readonly taper?: number;
  /** Greatest difference between two directions at one height. */
  readonly outOfRound?: number;
}

/** A reading that another took the place of. Nothing that was measured is lost. */
export interface Replaced {
  /** As it was written. */
  readonly was: string;
  readonly because: string;
  readonly by?: string;
  readonly on?: string;
}

/** The circumstances of a reading. */
export interface Taken {
  readonly by?: string;
  /** The day, `2026-03-14`. */
  readonly on?: string;
  /** Of the part while it was measured, as written: `20.5 degC`. */
  readonly temperature?: string;
  /** What was bolted on, and how: `caps at final torque`. */
  readonly joint?: string;
  /** Readings before this one, the latest last. */
  readonly replaces?: readonly Replaced[];
}

/** A number as it stands in a build, in SI. */
export interface DimensionValue {
  readonly kind: "dimension";
  readonly nominal: number;
  readonly low: number;
  readonly high: number;
  /** Symbol of the unit in which it was written. */
  readonly unit: string;
  readonly text: string;
  readonly provenance: Provenance;
  readonly toleranceFrom: ToleranceOrigin;
  readonly instrument?: string;
  /** Expanded uncertainty of a reading (k = 2), for measured values. */
  readonly uncertainty?: number;
  /** What each cylinder, crankpin or main bearing has, by its number, where it was measured for each. */
  readonly positions?: Readonly<Record<string, DimensionValue>>;
  /** Beside `positions`: what those have that were not measured. Absent: nothing is known of them. */
  readonly elsewhere?: DimensionValue;
  /** For one position with readings at several heights or in several directions. */
  readonly form?: Form;
  readonly note?: string;
  /** For measured values: who took the reading, when and how it stood. */
  readonly taken?: Taken;
}

export interface ChoiceValue {
  readonly kind: "choice";
  readonly value: string;
  readonly provenance: Provenance;
}

export interface TextValue {
  readonly kind: "text";
  readonly value: string;
}

/** One row of a table: numbers in SI and words by column. A column that was left out is not there. */
export type TableRow = Readonly<Record<string, number | string>>;

export interface TableValue {
  readonly kind: "table";
  readonly rows: readonly TableRow[];
  readonly provenance: Provenance;
  readonly text: string;
}

export type FieldValue = DimensionValue | ChoiceValue | TextValue | TableValue;
