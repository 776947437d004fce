import type { Weight } from "@trialfit/rules";
import type { VerdictWord } from "../../judge/Verdict.ts";
import type { Provenance } from "../../read/FieldSpec.ts";
import type { ReportVerdict } from "../../report/Report.ts";
import type { WorkKind } from "./works.ts";

/** A rule that a change would break: it holds now, or at least does not fail. */
export interface Broken {
  readonly rule: string;
  readonly weight: Weight;
  /** What it says after the change; absent where only that it no longer holds was worked out. */
  readonly becomes?: VerdictWord;
}

/** A rule that fails or is open already, and that a change brings further from holding. */
export interface Worsened {
  readonly rule: string;
  readonly weight: Weight;
  /** What it says before the change, and says still or no longer knows. */
  readonly verdict: "fails" | "open";
  /**
   * By which part of what it lacked it lacks more: 0.05 is a twentieth. Absent where something lacked nothing before, or
   * is no longer known.
   */
  readonly by?: number;
  /** By less than a hundredth of what it lacked or a thousandth of what it compares: it makes no difference. */
  readonly slight: boolean;
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

/**
 * A change that makes a finding hold over the whole band and breaks nothing, or, among `compromises`, nothing that
 * weighs as much as the finding.
 */
export interface Remedy extends SizeChange {
  /** What one step less comes to: the finding's verdict then, and what it would break. */
  readonly oneStepLess: { readonly verdict: VerdictWord; readonly breaks: readonly string[] };
  /** Other findings that hold after it, too. */
  readonly settles: readonly string[];
  /** Rules that it breaks: lighter ones than the finding. Empty unless it is a compromise. */
  readonly brings: readonly Broken[];
  /** What does not hold already and is further from holding after it. */
  readonly worsens: readonly Worsened[];
  /** Rules of other findings in the report whose remedies move the same dimension the other way. */
  readonly contradicts: readonly string[];
}

/** Why a dimension that can be changed is no remedy. */
export interface NoRemedy {
  readonly path: string;
  readonly label: string;
  /**
   * `breaks`: the finding holds at `nearest`, and something else no longer does. `too-loose`: at `nearest`, or at the
   * size that it has, it holds at the nominal values, over the whole band at no size: tolerances are wider than the
   * room. `unknown`: at `nearest` it no longer fails, and whether it holds is not known before `needs` are given.
   * `out-of-reach`: at no size that work gives it, as far as the field goes, was it found to hold at all.
   */
  readonly why: "breaks" | "too-loose" | "unknown" | "out-of-reach";
  readonly nearest?: SizeChange;
  /** What breaks at `nearest`; where the finding itself does not surely hold there, at the nominal values. */
  readonly breaks?: readonly Broken[];
  /** The same of what fails or is open already and is worse there. */
  readonly worsens?: readonly Worsened[];
  /** Fields without which the rule is unknown there. */
  readonly needs?: readonly string[];
  /**
   * Of what is too loose how closely it would have to be kept at that size: `own` is the tolerance of the dimension,
   * with its unit, if that alone does; otherwise `share` is the part of what they are now to which all tolerances under
   * the rule would have to shrink. Absent where neither was found to do.
   */
  readonly closer?: { readonly own?: string; readonly share?: number };
}

/** What would make one finding hold. */
export interface FindingRemedies {
  readonly rule: string;
  readonly title: string;
  readonly weight: Weight;
  readonly verdict: "fails" | "open";
  /**
   * `achievable` by one change; `compromise` only by one that breaks what weighs less than the finding; `unachievable`
   * by any; `measure` where it holds on paper and waits for being measured,
   * which no other size changes.
   */
  readonly state: "achievable" | "compromise" | "unachievable" | "measure";
  /**
   * The smallest change for each dimension and kind of work: what makes nothing worse first, then by the work, the
   * cheapest first, then by steps. What becomes only slightly worse does not count.
   */
  readonly remedies: readonly Remedy[];
  /** Where there is no such change: the smallest that break only what weighs less, ranked in the same way. */
  readonly compromises: readonly Remedy[];
  readonly others: readonly NoRemedy[];
  /** Dimensions on which the finding rests and that nobody can choose, or that follow a word. */
  readonly fixed: readonly string[];
  /** For an open finding the cheaper way: what to measure, as the report says it. */
  readonly settlement?: NonNullable<ReportVerdict["settlement"]>;
  readonly unmeasured?: readonly string[];
}

/** A dimension that some findings want larger and others smaller. */
export interface Contradiction {
  readonly path: string;
  readonly label: string;
  /** Rules whose remedies make it larger, and smaller. */
  readonly larger: readonly string[];
  readonly smaller: readonly string[];
}

/** What `findRemedies` found. Plain data in a stable order: heaviest findings first. */
export interface RemedyReport {
  readonly format: "trialfit-remedies";
  readonly formatVersion: 1;
  readonly build: string;
  readonly findings: readonly FindingRemedies[];
  readonly contradictions: readonly Contradiction[];
  /** Of the rules that were asked for those that neither fail nor are open, with what they say. */
  readonly asked: readonly { readonly rule: string; readonly verdict: VerdictWord }[];
  /** How many of the rules looked at are unknown or wait for a person: they have not passed, and nothing is sought for them. */
  readonly unsettled: number;
}
