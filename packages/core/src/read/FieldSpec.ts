import * as z from "zod/mini";

/** Where a value comes from. The report never lets these look alike. */
export const provenances = ["data-sheet", "measured", "assumed", "target"] as const;
export type Provenance = (typeof provenances)[number];

/** A value taken for a field that a build leaves out, and why. */
export interface AssumedValue {
  /** A dimension with its tolerance, wide enough for what the trade would find; a choice; or a count. */
  readonly value: string;
  readonly because: string;
}

interface DefaultTerms {
  /** Fields whose presence shows that this one was forgotten, not left out: then there is no default. */
  readonly unless?: readonly string[];
}

/** Taken when a build leaves the field out: always listed in the report as assumed. */
export type FieldDefault =
  | (AssumedValue & DefaultTerms)
  | (DefaultTerms & {
      /** Path of a choice field: the value follows its word, and there is none for a word that is not listed. */
      readonly byChoice: string;
      readonly values: Readonly<Record<string, AssumedValue>>;
    });

/** What an engine has several of, each of which may be measured for itself. */
export const positionKinds = {
  cylinder: "cylinder",
  crankpin: "crankpin",
  main: "main bearing",
} as const;
export type PositionKind = keyof typeof positionKinds;

/** Stages of a build, in their order. */
export const stages = ["choose", "machine", "trial-assembly", "final-assembly", "run"] as const;
export type Stage = (typeof stages)[number];

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
  /** Taken when a value is given without a tolerance; always listed. Absent: taken as exact, and `exact` says why. */
  readonly tolerance?: string;
  /** Why a value without a tolerance is taken as exact; half a sentence for people. */
  readonly exact?: string;
  /** What there is one of this dimension for: readings may be given for each. Absent: one for the engine. */
  readonly per?: PositionKind;
  /** Stage from which a published size is not enough: by then it must have been measured. */
  readonly measureBy?: Stage;
  /** Fields that the readings give as well, when they are taken at several heights and in several directions. */
  readonly form?: { readonly taper?: string; readonly outOfRound?: string };
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

/** What one column of a table holds. */
export type ColumnSpec = DimensionSpec | ChoiceSpec | CountSpec;

/** A list of rows with the same columns: an outline, a lift curve, the throws of a crankshaft. */
export interface TableSpec extends CommonSpec {
  readonly kind: "table";
  readonly columns: Readonly<Record<string, ColumnSpec>>;
  /** Columns that a row may leave out. */
  readonly optional: readonly string[];
  /** Least and most number of rows. */
  readonly least: number;
  readonly most: number;
  /** A row as it is written in the build file. */
  readonly row: string;
}

export type FieldSpec = ColumnSpec | TextSpec | TableSpec;

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
  /** Whether one of these may change places with another: a piston from cylinder 3 to cylinder 5. */
  readonly exchangeable?: boolean;
  /** False for what nobody sells: a plan, a setting, the conditions of running. Absent: it is bought. */
  readonly bought?: false;
}
