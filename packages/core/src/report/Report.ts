import type { RuleFile, Standing, Use, Weight, Work } from "@trialfit/rules";
import type { Doubt } from "../derive/statistics/rootSumSquare.ts";
import type { Sampled } from "../derive/statistics/summarise.ts";
import type { Departure } from "../judge/AppliedSet.ts";
import type { Settlement } from "../judge/howToSettle.ts";
import type { PlaceVerdict } from "../judge/Judged.ts";
import type { HoldsIn } from "../judge/sampleVerdicts.ts";
import type { Comparison, VerdictWord } from "../judge/Verdict.ts";
import type { Confirmation } from "../read/confirmations.ts";
import type { PositionKind, Provenance, Stage } from "../read/FieldSpec.ts";
import type { ToleranceOrigin } from "../read/FieldValue.ts";
import type { ReportPending } from "./ReportPending.ts";

/** A value of the build as the report carries it; numbers in SI. */
export interface ReportField {
  readonly path: string;
  readonly label: string;
  readonly text: string;
  readonly provenance: Provenance;
  readonly unit?: string;
  readonly nominal?: number;
  readonly low?: number;
  readonly high?: number;
  readonly toleranceFrom?: ToleranceOrigin;
  /** How well founded the band is, where the build does not state it. */
  readonly toleranceStanding?: Standing;
}

/** What the report says of one quantity; numbers in SI, `unit` is the one to show it in. */
export interface ReportQuantity {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly unit: string;
  readonly decimals: number;
  readonly state: "value" | "missing" | "impossible";
  readonly nominal?: number;
  readonly low?: number;
  readonly high?: number;
  /** Formula or method, and the values of its direct inputs. */
  readonly formula: string;
  readonly inputs?: Readonly<Record<string, number>>;
  /**
   * What each toleranced input does to it, largest first: its share in the width of the worst-case band, and its share
   * in the sum of squares of the root-sum-square band (absent where there is none).
   */
  readonly spreadBy?: readonly {
    readonly path: string;
    readonly share: number;
    readonly varianceShare?: number;
  }[];
  /** Statistical band beside the worst case, for independent inputs whose tolerances are equally many deviations. */
  readonly rootSumSquare?: {
    readonly low: number;
    readonly centre: number;
    readonly high: number;
    /** Why it is not to be trusted; empty where it is. */
    readonly doubts: readonly Doubt[];
  };
  /** How it scatters over the drawn engines, where engines were drawn. */
  readonly sampled?: Sampled;
  readonly assumed?: readonly string[];
  /** What the way to it takes for granted, in words: a stand-in where nothing was measured. */
  readonly takenFor?: readonly string[];
  readonly missing?: readonly string[];
  readonly reason?: string;
}

/** The verdict of one rule, with what it asks of the builder. */
export interface ReportVerdict {
  readonly rule: string;
  readonly title: string;
  readonly system: string;
  readonly parts: readonly string[];
  readonly verdict: VerdictWord;
  readonly work: Work;
  readonly weight: Weight;
  readonly nominally: boolean;
  readonly because: string;
  /** What to do, with this build's numbers; present where the verdict asks something. */
  readonly remedy?: string;
  readonly caution?: string;
  readonly disputed?: string;
  readonly comparisons: readonly Comparison[];
  readonly missing: readonly string[];
  readonly reasons: readonly string[];
  /** Fields on whose documented default or stated assumption the verdict rests. */
  readonly assumed: readonly string[];
  /** What the ways to the compared values take for granted, in words. */
  readonly takenFor: readonly string[];
  /** For `open`: the inputs whose tolerance or assumption spreads it most, largest first. */
  readonly settleBy: readonly string[];
  /**
   * For `open`: the fewest dimensions that would settle it and the expanded uncertainty to which each must be
   * measured [SI; `unit` is the one to show it in], and how they must come out for it: as expected, or, where the
   * expected value lies on the limit, clear of that. Absent: nothing that weighs can be measured.
   */
  readonly settlement?: {
    readonly becomes: Settlement["becomes"];
    readonly provided: Settlement["provided"];
    readonly measure: readonly {
      readonly path: string;
      readonly uncertainty: number;
      readonly unit: string;
    }[];
  };
  /** In how many of the drawn engines it holds, where engines were drawn and no input is missing. */
  readonly holdsIn?: HoldsIn;
  /** For `open`: dimensions that hold on paper only, at a stage by which they are to be measured. */
  readonly unmeasured?: readonly string[];
  /** Where dimensions were measured by position: the worst cylinder, crankpin or main bearing, and each of them. */
  readonly at?: string;
  readonly places?: readonly PlaceVerdict[];
  /** Where a person must look, since no number tells: what, when, and what it looks like when it is not right. */
  readonly confirm?: NonNullable<RuleFile["confirm"]>;
  /** What the person who looked wrote down. */
  readonly confirmed?: Confirmation;
  /** True for `unknown` where nothing is missing but that person's word. */
  readonly toConfirm: boolean;
  readonly standing: Readonly<Record<string, string>>;
  readonly sources: readonly { readonly id: string; readonly where?: string }[];
}

export interface ReportSummary {
  readonly holds: number;
  readonly fails: number;
  readonly open: number;
  /** Inputs are missing. */
  readonly unknown: number;
  /** Nothing is missing but what a person must look at and confirm. */
  readonly toConfirm: number;
  readonly notApplicable: number;
  /**
   * True when every stop rule that is or may be relevant surely holds, and no rule is pending. What a person must confirm counts only when
   * a stage is named: before that, the engine need not stand there to be looked at.
   */
  readonly sound: boolean;
  /** Stop rules that fail, are open, or are unknown; those to be confirmed only when a stage is named. */
  readonly stops: number;
}

/** A better place for each of a set of parts that were measured one by one. */
export interface ReportExchange {
  /** Key of the part in the build file. */
  readonly part: string;
  readonly per: PositionKind;
  /** Only those that move, by number from 1. */
  readonly moves: readonly { readonly from: number; readonly to: number }[];
  /** Rules that stand better after it, worst place before and after. */
  readonly betters: readonly {
    readonly rule: string;
    readonly before: VerdictWord;
    readonly after: VerdictWord;
  }[];
}

/** How the engines were drawn that stand beside the verdicts. They change none. */
export interface ReportStatistics {
  readonly draws: number;
  readonly seed: number;
  /** By which laws they were drawn, and what they are good for, in words. */
  readonly about: string;
}

/** The result of an evaluation: plain data, stable order, serialisable. */
export interface Report {
  readonly format: "trialfit-report";
  readonly formatVersion: 1;
  readonly trialfit: string;
  readonly build: { readonly name: string; readonly file?: string; readonly hash: string };
  readonly stage: Stage | "all";
  /** The set of rules that was judged with, and every way in which it departs from the whole catalog. */
  readonly set?: {
    readonly id: string;
    readonly title: string;
    /** The use for which every build is judged, whatever it states. */
    readonly use?: Use;
    readonly departures: readonly Departure[];
    /** Rules that the set does not count, with what they would have said. */
    readonly silenced: readonly Pick<ReportVerdict, "rule" | "title" | "weight" | "verdict">[];
  };
  readonly summary: ReportSummary;
  /** Only in a report that was made before all was worked out: what is left. The build is not sound while there is a rule among it. */
  readonly pending?: ReportPending;
  /** Where engines were drawn within the tolerances. */
  readonly statistics?: ReportStatistics;
  /** In the order of the rules' ids; also those that hold. */
  readonly verdicts: readonly ReportVerdict[];
  readonly quantities: readonly ReportQuantity[];
  readonly fields: readonly ReportField[];
  /** Fields that were left out and taken at their documented default. */
  readonly assumptions: readonly { readonly path: string; readonly text: string; readonly because: string }[];
  /** Parts that were measured one by one and would stand better in other places. */
  readonly exchanges: readonly ReportExchange[];
  /** Confirmations of the build for which there is no rule, with the nearest id that there is. */
  readonly strayConfirmations: readonly { readonly rule: string; readonly didYouMean?: string }[];
}
