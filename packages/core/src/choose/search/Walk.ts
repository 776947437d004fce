import { operandOf } from "../../judge/decide.ts";
import { scoreOf, vectorOf } from "./Objective.ts";
import { countsForMargin, type Plan } from "./Plan.ts";
import type { ProjectedJudge, Question } from "./ProjectedJudge.ts";
import type { RuleOutcome } from "./RuleAsked.ts";
import type { Domain, Scoring } from "./Scoring.ts";
import { BestFew, compareIn, Front } from "./Standings.ts";
import { type CutReason, reasonToCut, Tally } from "./Tally.ts";

/** How a walk is done. */
export interface WalkTerms {
  readonly plan: Plan;
  readonly judge: ProjectedJudge;
  readonly scoring: Scoring;
  /** Parts of each kind. */
  readonly sizes: readonly number[];
  readonly best: number;
  /** Whether every stop rule must surely hold. */
  readonly demand: boolean;
  /** Whether every combination that fits is counted, also those that cannot be among the best. */
  readonly countAll: boolean;
  /** Which part of all combinations: number `part` of `of`, from 0. */
  readonly shard: { readonly part: number; readonly of: number };
}

/** Branches for each shard, so that all take about as long. */
const BRANCHES = 64;

/** Goes through all combinations once, leaving out branches in which none can be wanted. */
export class Walk {
  readonly tally = new Tally();
  readonly few: BestFew;
  readonly front: Front;
  /** Choices that were looked at. */
  steps = 0;
  private readonly terms: WalkTerms;
  private readonly chosen: Int32Array;
  /** By the number of chosen kinds: what is left of each kind; undefined for chosen ones. */
  private readonly domains: (Domain | undefined)[][] = [];
  /** By level, the position in its domain of what is to be tried next. */
  private readonly positions: number[] = [];
  /** By the number of chosen kinds: least margin so far, and of the branch the number that tells its shard. */
  private readonly margins: number[] = [Infinity];
  private readonly branches: number[] = [0];
  /** Levels from the top at which branches are dealt out to shards. */
  private readonly dealt: number;
  private readonly missed = new WeakSet<RuleOutcome>();
  private level = 0;

  constructor(terms: WalkTerms) {
    this.terms = terms;
    const compareChosen = compareIn(terms.plan.order);
    this.few = new BestFew(terms.best, compareChosen);
    this.front = new Front(compareChosen);
    this.chosen = new Int32Array(terms.sizes.length);
    let [dealt, branches] = [0, 1];
    while (terms.shard.of > 1 && dealt < terms.sizes.length && branches < BRANCHES * terms.shard.of)
      branches *= terms.sizes[terms.plan.order[dealt++]!]!;
    this.dealt = dealt;
    this.begin();
  }

  /** Whether all is done. */
  get done(): boolean {
    return this.level < 0;
  }

  /** Part of the way that is behind, 0 to 1. */
  get progress(): number {
    if (this.done) return 1;
    let [sum, share] = [0, 1];
    for (let level = 0; level <= this.level; level += 1) {
      const count = this.domains[level]![this.terms.plan.order[level]!]!.options.length;
      sum += (share * this.positions[level]!) / Math.max(1, count);
      share /= Math.max(1, count);
    }
    return Math.min(1, sum);
  }

  /** The choice that is to be looked at next, level by level, to begin there again. */
  get place(): readonly number[] {
    return Array.from(
      { length: this.level + 1 },
      (_, level) => this.optionsAt(level)[this.positions[level]!] ?? -1,
    );
  }

  /**
   * Goes to a place without looking at anything before it.
   * @param place from `place` of a walk on the same terms
   */
  goTo(place: readonly number[]): void {
    for (const [level, option] of place.entries()) {
      const options = this.optionsAt(level);
      const at = option < 0 ? options.length : options.indexOf(option);
      if (at < 0) throw new RangeError("this is no place of this search");
      this.positions[level] = at;
      this.level = level;
      if (level < place.length - 1) this.choose(level, option, false);
    }
  }

  /** Nothing is left to be looked at. */
  end(): void {
    this.level = -1;
  }

  /** Looks at the next choice. */
  step(): void {
    const options = this.optionsAt(this.level);
    const option = options[this.positions[this.level]!];
    if (option === undefined) {
      this.level -= 1;
      if (this.level >= 0) this.positions[this.level]! += 1;
      return;
    }
    this.steps += 1;
    if (this.choose(this.level, option, true)) {
      if (this.level + 1 < this.terms.sizes.length) {
        this.level += 1;
        this.positions[this.level] = 0;
        return;
      }
      this.finish();
    }
    this.positions[this.level]! += 1;
  }

  private optionsAt(level: number): readonly number[] {
    return this.domains[level]![this.terms.plan.order[level]!]!.options;
  }

  /** What the rules say before any part is chosen. */
  private begin(): void {
    const { sizes, scoring, shard } = this.terms;
    const whole = sizes.map((_, kind) => scoring.whole(kind));
    this.domains[0] = whole;
    this.positions[0] = 0;
    const counts = shard.part === 0;
    const cut = this.terms.plan.stages[0]!.own.some((question) => this.cuts(question, 0, counts));
    if (cut || !this.lookAhead(0, counts)) this.level = -1;
  }

  /**
   * Chooses a part.
   * @param counts false to come to the same place again: nothing is counted, nothing judged but what leads there
   * @returns whether anything can come of it
   */
  private choose(level: number, option: number, counts: boolean): boolean {
    const { plan, judge, shard, sizes } = this.terms;
    const kind = plan.order[level]!;
    const stage = level + 1;
    const branch = (this.branches[level]! * sizes[kind]! + option) % shard.of;
    const shared = stage < this.dealt;
    if (stage === this.dealt && branch !== shard.part) return false;
    this.branches[stage] = shared || stage === this.dealt ? branch : this.branches[level]!;
    this.chosen[kind] = option;
    this.domains[stage] = this.domains[level]!.with(kind, undefined);
    this.margins[stage] = this.margins[level]!;
    const count = counts && (!shared || branch === shard.part);
    // What all shards come through is left out by none of them: they would count it several times.
    if (counts && !shared && this.outranked(stage)) return false;
    if (!this.lookAhead(stage, count)) return false;
    if (counts && !shared && this.outranked(stage)) return false;
    if (counts && plan.stages[stage]!.own.some((question) => this.cuts(question, stage, count))) return false;
    if (!this.terms.scoring.marginCounts) return true;
    this.margins[stage] = plan.stages[stage]!.settled.reduce((least, question) => {
      const { margin } = judge.ask(question, this.chosen);
      return Number.isNaN(margin) ? least : Math.min(least, margin);
    }, this.margins[level]!);
    return !counts || shared || !this.outranked(stage);
  }

  /** Takes parts of other kinds out that do not go with what is chosen. @returns whether any kind has some left */
  private lookAhead(stage: number, counts: boolean): boolean {
    const domains = this.domains[stage]!;
    for (const [kind, questions] of this.terms.plan.stages[stage]!.ahead.entries()) {
      for (const question of questions) {
        domains[kind] = this.narrowed(
          domains[kind]!,
          kind,
          question,
          counts ? this.combinations(stage, kind) : undefined,
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
      const reason = reasonToCut(outcome, demand && question.whole);
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
  private cuts(question: Question, stage: number, counts: boolean): boolean {
    const outcome = this.terms.judge.ask(question, this.chosen);
    const reason = reasonToCut(outcome, this.terms.demand && question.whole);
    if (reason === undefined) return false;
    if (counts) this.fall(question, outcome, reason, this.combinations(stage));
    return true;
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
      left: miss.lookup(miss.leaf.fact),
      right: operandOf(miss.leaf, miss.lookup),
    });
  }

  /** Combinations of what is left of the kinds that are not chosen, but for one of them. */
  private combinations(stage: number, but?: number): number {
    let count = 1;
    for (const [kind, domain] of this.domains[stage]!.entries())
      if (domain !== undefined && kind !== but) count *= domain.options.length;
    return count;
  }

  private outranked(stage: number): boolean {
    const { scoring, countAll } = this.terms;
    if (countAll) return false;
    const prospect = scoring.prospect(this.chosen, this.domains[stage]!, this.margins[stage]!);
    if (!this.few.excludes(prospect)) return false;
    if (scoring.front.length > 0 && !this.front.excludes(prospect)) return false;
    this.tally.outranked += this.combinations(stage);
    return true;
  }

  private finish(): void {
    const { scoring } = this.terms;
    const least = this.margins[this.terms.sizes.length]!;
    const totals = scoring.totals(
      this.chosen,
      this.terms.scoring.marginCounts && least < Infinity ? least : undefined,
    );
    const entry = {
      chosen: [...this.chosen],
      score: scoreOf(scoring.weights, totals),
      vector: vectorOf(scoring.front, totals),
    };
    this.tally.reached += 1;
    this.few.add(entry);
    if (scoring.front.length > 0) this.front.add(entry);
  }
}
