import type { Weight } from "@trialfit/rules";
import type { VerdictWord } from "../../judge/Verdict.ts";
import type { Provenance } from "../../read/FieldSpec.ts";
import type { ReportVerdict } from "../../report/Report.ts";
import type { WorkKind } from "./works.ts";

/** A rule that a change would break: it holds now, or at least does not fail. */
export interface Broken {
  readonly rule: string;
  /** What it says after the change; absent where only that it no longer holds was worked out. */
  readonly becomes?: VerdictWord;
}

/** One dimension brought to another size. Numbers in SI, `unit` is the one to show them in. */
export interface SizeChange {
  readonly path: string;
  readonly label: string;
  readonly work: WorkKind;
  readonly unit: string;
  /** As it stands now: as it was written, or as it is taken where nothing was. */
  readonly was: string;
  readonly provenance: Provenance;
  /** Nominal sizes; of what was measured place by place the mean. */
  readonly from: number;
  readonly to: number;
  /** The step in which it was sought, and how many of them it is. */
  readonly step: number;
  readonly steps: number;
  /**
   * As it stands in a build file, kept as closely as before. Absent where the dimension was measured place by place:
   * each place then moves by `to` less `from`.
   */
  readonly text?: string;
}

/** A change that makes a finding hold over the whole band and breaks nothing. */
export interface Remedy extends SizeChange {
  /** What one step less comes to: the finding's verdict then, and what it would break. */
  readonly oneStepLess: { readonly verdict: VerdictWord; readonly breaks: readonly string[] };
  /** Other findings that hold after it, too. */
  readonly settles: readonly string[];
}

/** Why a dimension that can be changed is no remedy. */
export interface NoRemedy {
  readonly path: string;
  readonly label: string;
  /**
   * `breaks`: the finding holds at `nearest`, and something else no longer does. `too-loose`: at some size it holds at
   * the nominal values, over the whole band at none: tolerances are wider than the room. `out-of-reach`: at no size that
   * work gives it, as far as the field goes, was it found to hold at all.
   */
  readonly why: "breaks" | "too-loose" | "out-of-reach";
  readonly nearest?: SizeChange;
  readonly breaks?: readonly Broken[];
}

/** What would make one finding hold. */
export interface FindingRemedies {
  readonly rule: string;
  readonly title: string;
  readonly weight: Weight;
  readonly verdict: "fails" | "open";
  /**
   * `achievable` by one change; `unachievable` by any; `measure` where it holds on paper and waits for being measured,
   * which no other size changes.
   */
  readonly state: "achievable" | "unachievable" | "measure";
  /** The smallest change for each dimension and kind of work, ranked by the work, then by steps. */
  readonly remedies: readonly Remedy[];
  readonly others: readonly NoRemedy[];
  /** Dimensions on which the finding rests and that nobody can choose, or that follow a word. */
  readonly fixed: readonly string[];
  /** For an open finding the cheaper way: what to measure, as the report says it. */
  readonly settlement?: NonNullable<ReportVerdict["settlement"]>;
  readonly unmeasured?: readonly string[];
}

/** What `findRemedies` found. Plain data in a stable order: heaviest findings first. */
export interface RemedyReport {
  readonly format: "trialfit-remedies";
  readonly formatVersion: 1;
  readonly build: string;
  readonly findings: readonly FindingRemedies[];
  /** Of the rules that were asked for those that neither fail nor are open, with what they say. */
  readonly asked: readonly { readonly rule: string; readonly verdict: VerdictWord }[];
}
