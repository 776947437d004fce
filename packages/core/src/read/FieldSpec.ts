import { z } from "zod";

/** Where a value comes from. The report never lets these look alike. */
export const provenances = ["data-sheet", "measured", "assumed", "target"] as const;
export type Provenance = (typeof provenances)[number];

/** Taken when a build leaves the field out: always listed in the report as assumed. */
export interface FieldDefault {
  /** A dimension with its tolerance, wide enough for what the trade would find; a choice; or a count. */
  readonly value: string;
  readonly because: string;
  /** Fields whose presence shows that this one was forgotten, not left out: then there is no default. */
  readonly unless?: readonly string[];
}

interface CommonSpec {
  readonly label: string;
  /** What it is, from where to where it is measured, which sign; one or two sentences for a beginner. */
  readonly help: string;
  readonly assumed?: FieldDefault;
}

export interface DimensionSpec extends CommonSpec {
  readonly kind: "dimension";
  /** Symbol as the trade writes it, `B_g` for a subscript. */
  readonly symbol: string;
  /** Unit in which people usually give it; any unit of the same kind is read. */
  readonly unit: string;
  /** Lowest and highest value that is not a slip of the pen, as text with unit. */
  readonly range: readonly [string, string];
  /** Taken when a value is given without a tolerance; always listed. Absent: taken as exact. */
  readonly tolerance?: string;
  /** Words that carry a sign: the value is multiplied by the factor. */
  readonly signs?: Readonly<Record<string, 1 | -1>>;
  /** Words that say where: kept as the choice `<path>.place`. */
  readonly places?: readonly string[];
}

export interface ChoiceSpec extends CommonSpec {
  readonly kind: "choice";
  /** Option → what it means. */
  readonly options: Readonly<Record<string, string>>;
}

export interface CountSpec extends CommonSpec {
  readonly kind: "count";
  readonly symbol: string;
  readonly least: number;
  readonly most: number;
}

export interface TextSpec extends CommonSpec {
  readonly kind: "text";
}

export interface OutlineSpec extends CommonSpec {
  readonly kind: "outline";
}

export type FieldSpec = DimensionSpec | ChoiceSpec | CountSpec | TextSpec | OutlineSpec;

/** The spec of every field schema, so that schemas, labels, help and documents come from one declaration. */
export const fieldSpecs = z.registry<FieldSpec>();

/** What a part is, for the site and the forms. */
export interface PartSpec {
  /** Name in the build file. */
  readonly key: string;
  /** Name in rules and pages: the trade's word, with hyphens. */
  readonly id: string;
  readonly label: string;
  readonly help: string;
}
