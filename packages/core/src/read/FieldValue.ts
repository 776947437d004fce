import type { Provenance } from "./FieldSpec.ts";

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
  /** `stated` in the build, `default` from the field's own tolerance, `none` where the field has none. */
  readonly toleranceFrom: "stated" | "default" | "none";
  readonly instrument?: string;
  readonly note?: string;
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
