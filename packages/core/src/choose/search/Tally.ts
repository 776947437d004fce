import type { Fact } from "../../judge/Fact.ts";
import type { Question } from "./Question.ts";
import type { RuleOutcome } from "./RuleAsked.ts";
import type { Miss } from "./relativeMargin.ts";

/** Why a rule takes a combination out: it surely fails, or it is not as sure or as known as is demanded. */
export type CutReason = "fails" | "unsettled";

/** What of a rule: nothing but that it does not fail, that it can be worked out, or that it surely holds. */
export type Demand = boolean | "known";

/**
 * Why a combination is taken out by what a rule says of it, if it is.
 * @param demand what is demanded of a rule, but for what a person has to confirm
 */
export function reasonToCut({ word, toConfirm }: RuleOutcome, demand: Demand): CutReason | undefined {
  if (word === "fails") return "fails";
  if (demand === "known") return word === "unknown" && !toConfirm ? "unsettled" : undefined;
  const settled = word === "holds" || word === "not-applicable" || toConfirm;
  return demand && !settled ? "unsettled" : undefined;
}

/** Of the choices that a rule took out the one that it missed by least. */
export interface NearestMiss {
  /** The chosen part of every kind on which the rule rests: index of the kind, index of the part. */
  readonly chosen: readonly (readonly [kind: number, option: number])[];
  /** Below zero: by how much the limit is missed, as a part of the greater side; −∞ for words. */
  readonly relative: number;
  readonly miss: Miss;
  /** Whether it is an aim of the build that was missed. */
  readonly isAim: boolean;
  readonly left: Fact;
  readonly right: Fact | { readonly kind: "words"; readonly words: readonly string[] };
}

/** Combinations by what became of them. They are whole numbers up to 2⁵³, and beyond that rounded. */
export class Tally {
  /** Judged to the end and not taken out. */
  reached = 0;
  /** Left out because none of them could have been among the best. */
  outranked = 0;
  /** By the number of the rule. */
  readonly fell = new Map<number, Record<CutReason, number>>();
  readonly nearest = new Map<number, NearestMiss>();

  fall({ index }: Pick<Question, "index">, reason: CutReason, count: number): void {
    const counts = this.fell.get(index) ?? { fails: 0, unsettled: 0 };
    counts[reason] += count;
    this.fell.set(index, counts);
  }

  near({ index }: Pick<Question, "index">, miss: NearestMiss): void {
    const known = this.nearest.get(index);
    if (known === undefined || miss.relative > known.relative) this.nearest.set(index, miss);
  }
}
