import type { Weight } from "@trialfit/rules";
import type { VerdictWord } from "../judge/Verdict.ts";
import type { Stage } from "../read/FieldSpec.ts";
import type { ReportQuantity, ReportSummary } from "../report/Report.ts";

/** What of a value is no longer the same. */
export const aspects = {
  value: "its size or word",
  tolerance: "its band",
  provenance: "where it comes from",
  readings: "what was measured at single places",
  confirmation: "who confirmed it, when or how",
} as const;
export type Aspect = keyof typeof aspects;

/** One value that is not as it was. */
export interface ValueChange {
  readonly path: string;
  readonly label: string;
  /** As written, with where it comes from unless it was given; absent where the build had none. */
  readonly before?: string;
  readonly after?: string;
  /** Empty where the value came or went. */
  readonly aspects: readonly Aspect[];
}

/** A band in SI. */
export interface Span {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** What one changed value alone does to the nominal value of a quantity, all others left as they were [SI]. */
export interface Cause {
  readonly path: string;
  readonly change: number;
}

/** One quantity that is not as it was. */
export interface QuantityChange extends Pick<ReportQuantity, "id" | "name" | "unit" | "decimals"> {
  /** Absent where it could not be computed. */
  readonly before?: Span;
  readonly after?: Span;
  /** Largest effect first. Empty where it could not be computed before or after. */
  readonly causes: readonly Cause[];
}

/** One rule whose verdict is not as it was. */
export interface VerdictChange {
  readonly rule: string;
  readonly title: string;
  readonly weight: Weight;
  readonly before: VerdictWord;
  readonly after: VerdictWord;
  /** Changed values under what the rule compares. */
  readonly because: readonly string[];
  /** What the rule compares and changed: ids of quantities, paths of fields. */
  readonly compared: readonly string[];
}

/** How one side of a comparison stands. */
export interface Side {
  readonly name: string;
  readonly file?: string;
  readonly hash: string;
  readonly summary: ReportSummary;
}

/** What changed between two states of a build, and why: plain data, stable order. */
export interface BuildChange {
  readonly format: "trialfit-change";
  readonly formatVersion: 1;
  readonly trialfit: string;
  readonly stage: Stage | "all";
  readonly before: Side;
  readonly after: Side;
  /** In the order of the build file's fields. */
  readonly values: readonly ValueChange[];
  readonly quantities: readonly QuantityChange[];
  /** Those that became worse first. */
  readonly verdicts: readonly VerdictChange[];
}
