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

/** One vertex of a half outline, in the rod's own frame, in metres. */
export interface OutlineVertex {
  /** Along the rod from the big-end centre, positive towards the piston pin. */
  readonly along: number;
  /** Across the rod from its axis, never negative. */
  readonly across: number;
  readonly cornerRadius?: number;
  readonly arcRadius?: number;
}

export interface OutlineValue {
  readonly kind: "outline";
  readonly vertices: readonly OutlineVertex[];
  readonly provenance: Provenance;
  readonly text: string;
}

export type FieldValue = DimensionValue | ChoiceValue | TextValue | OutlineValue;
