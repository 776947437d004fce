import { operandOf } from "../../judge/decide.ts";
import { countsForMargin, type Stage } from "./Plan.ts";
import type { ProjectedJudge } from "./ProjectedJudge.ts";
import type { Question } from "./Question.ts";
import type { RuleOutcome } from "./RuleAsked.ts";
import type { Domain, Scoring } from "./Scoring.ts";
import { type CutReason, type Demand, reasonToCut, Tally } from "./Tally.ts";

/** Combinations of what is left of the kinds that are not chosen, but for one of them. */
export function combinationsOf(domains: readonly (Domain | undefined)[], but?: number): number {
  let count = 1;
  for (const [kind, domain] of domains.entries())
    if (domain !== undefined && kind !== but) count *= domain.options.length;
  return count;
}

/** By what combinations are taken out. */
export interface CutTerms {
  readonly judge: ProjectedJudge;
  readonly scoring: Scoring;
  readonly demand: Demand;
}

/** Asks the rules of a branch, takes out what they forbid, and counts why. */
export class Cuts {
  readonly tally = new Tally();
  private readonly terms: CutTerms;
  private readonly chosen: Int32Array;
  private readonly missed = new WeakSet<RuleOutcome>();

  /** @param chosen the part of every kind; kinds that are not chosen have any, and get others while they are tried */
  constructor(terms: CutTerms, chosen: Int32Array) {
    this.terms = terms;
    this.chosen = chosen;
  }

  /** Takes parts of other kinds out that do not go with what is chosen. @returns whether any kind has some left */
  lookAhead({ ahead }: Stage, domains: (Domain | undefined)[], counts: boolean): boolean {
    for (const [kind, questions] of ahead.entries()) {
      for (const question of questions) {
        domains[kind] = this.narrowed(
          domains[kind]!,
          kind,
          question,
          counts ? combinationsOf(domains, kind) : undefined,
        );
        if (domains[kind].options.length === 0) return false;
      }
    }
    return true;
  }

  /**
   * The parts of a kind that a rule leaves.
   * @param others combinations of the other kinds that each of them stands for; undefined when nothing is counted
   */
  private narrowed(domain: Domain, kind: number, question: Question, others: number | undefined): Domain {
    const { judge, scoring, demand } = this.terms;
    const left: number[] = [];
    const margins = countsForMargin(question) ? domain.margins?.slice() : undefined;
    for (const option of domain.options) {
      this.chosen[kind] = option;
      const outcome = judge.ask(question, this.chosen);
      const reason = reasonToCut(outcome, question.whole ? demand : false);
      if (reason !== undefined) {
        if (others !== undefined) this.fall(question, outcome, reason, others);
        continue;
      }
      left.push(option);
      if (margins !== undefined && outcome.margin < margins[option]!) margins[option] = outcome.margin;
    }
    const same = left.length === domain.options.length;
    if (margins === undefined) return same ? domain : scoring.domain(kind, left, domain.margins);
    return scoring.domain(kind, scoring.inOrder(left, margins), margins);
  }

  /** Whether a rule takes everything out that could still be chosen. */
  takesAll({ own }: Stage, domains: readonly (Domain | undefined)[], counts: boolean): boolean {
    const { judge, demand } = this.terms;
    return own.some((question) => {
      const outcome = judge.ask(question, this.chosen);
      const reason = reasonToCut(outcome, question.whole ? demand : false);
      if (reason === undefined) return false;
      if (counts) this.fall(question, outcome, reason, combinationsOf(domains));
      return true;
    });
  }

  private fall(question: Question, outcome: RuleOutcome, reason: CutReason, count: number): void {
    const { judge } = this.terms;
    this.tally.fall(question, reason, count);
    if (reason !== "fails" || this.missed.has(outcome)) return;
    this.missed.add(outcome);
    const miss = judge.miss(question, this.chosen);
    if (miss === undefined) return;
    this.tally.near(question, {
      chosen: question.kinds.map((kind) => [kind, this.chosen[kind]!] as const),
      relative: miss.relative,
      miss,
      isAim: question.isAim,
      left: miss.lookup(miss.leaf.fact),
      right: operandOf(miss.leaf, miss.lookup),
    });
  }
}
