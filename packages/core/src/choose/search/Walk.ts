import { Cuts, type CutTerms, combinationsOf } from "./Cuts.ts";
import { scoreOf, vectorOf } from "./Objective.ts";
import { Path } from "./Path.ts";
import type { Plan } from "./Plan.ts";
import type { Domain } from "./Scoring.ts";
import { BestFew, compareIn, Front } from "./Standings.ts";
import type { Tally } from "./Tally.ts";

/** How a walk is done. */
export interface WalkTerms extends CutTerms {
  readonly plan: Plan;
  /** Parts of each kind. */
  readonly sizes: readonly number[];
  readonly best: number;
  /** Whether every combination that fits is counted, also those that cannot be among the best. */
  readonly countAll: boolean;
  /** Which part of all combinations: number `part` of `of`, from 0. */
  readonly shard: { readonly part: number; readonly of: number };
}

/** Branches for each shard, so that all take about as long. */
const BRANCHES = 64;

/** Goes through all combinations once, leaving out branches in which none can be wanted. */
export class Walk {
  readonly tally: Tally;
  readonly few: BestFew;
  readonly front: Front;
  /** Choices that were looked at. */
  steps = 0;
  private readonly terms: WalkTerms;
  private readonly chosen: Int32Array;
  readonly path: Path;
  /** By the number of chosen kinds: least margin so far, and of the branch the number that tells its shard. */
  private readonly margins: number[] = [Infinity];
  private readonly branches: number[] = [0];
  /** Levels from the top at which branches are dealt out to shards. */
  private readonly dealt: number;
  private readonly cuts: Cuts;

  constructor(terms: WalkTerms) {
    this.terms = terms;
    this.path = new Path(terms.plan.order);
    const compareChosen = compareIn(terms.plan.order);
    this.few = new BestFew(terms.best, compareChosen);
    this.front = new Front(compareChosen);
    this.chosen = new Int32Array(terms.sizes.length);
    this.cuts = new Cuts(terms, this.chosen);
    this.tally = this.cuts.tally;
    let [dealt, branches] = [0, 1];
    while (terms.shard.of > 1 && dealt < terms.sizes.length && branches < BRANCHES * terms.shard.of)
      branches *= terms.sizes[terms.plan.order[dealt++]!]!;
    this.dealt = dealt;
    this.begin();
  }

  /** Whether all is done. */
  get done(): boolean {
    return this.path.level < 0;
  }

  /**
   * Goes to a place without looking at anything before it.
   * @param place from `path.place` of a walk on the same terms
   * @throws RangeError when it is no place of this search
   */
  goTo(place: readonly number[]): void {
    for (const [level, option] of place.entries()) {
      this.path.point(level, option);
      if (level < place.length - 1) this.choose(level, option, false);
    }
  }

  /** Nothing is left to be looked at. */
  end(): void {
    this.path.level = -1;
  }

  /** Looks at the next choice. */
  step(): void {
    const { path } = this;
    const option = path.next;
    if (option === undefined) {
      path.ascend();
      return;
    }
    this.steps += 1;
    const comes = this.choose(path.level, option, true);
    const isLast = path.level + 1 === this.terms.sizes.length;
    if (comes && isLast) this.finish();
    if (comes && !isLast) path.descend();
    else path.advance();
  }

  /** What the rules say before any part is chosen. */
  private begin(): void {
    const { sizes, scoring, shard } = this.terms;
    const whole: (Domain | undefined)[] = sizes.map((_, kind) => scoring.whole(kind));
    this.path.domains[0] = whole;
    const counts = shard.part === 0;
    const stage = this.terms.plan.stages[0]!;
    if (this.cuts.takesAll(stage, whole, counts) || !this.cuts.lookAhead(stage, whole, counts)) this.end();
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
    const asked = plan.stages[stage]!;
    const domains = this.path.domains[level]!.with(kind, undefined);
    this.path.domains[stage] = domains;
    this.margins[stage] = this.margins[level]!;
    const count = counts && (!shared || branch === shard.part);
    // What all shards come through is left out by none of them: they would count it several times.
    if (counts && !shared && this.outranked(stage)) return false;
    if (!this.cuts.lookAhead(asked, domains, count)) return false;
    if (counts && !shared && this.outranked(stage)) return false;
    if (counts && this.cuts.takesAll(asked, domains, count)) return false;
    if (!this.terms.scoring.marginCounts) return true;
    this.margins[stage] = asked.settled.reduce((least, question) => {
      const { margin } = judge.ask(question, this.chosen);
      return Number.isNaN(margin) ? least : Math.min(least, margin);
    }, this.margins[level]!);
    return !counts || shared || !this.outranked(stage);
  }

  private outranked(stage: number): boolean {
    const { scoring, countAll } = this.terms;
    if (countAll) return false;
    const prospect = scoring.prospect(this.chosen, this.path.domains[stage]!, this.margins[stage]!);
    if (!this.few.excludes(prospect)) return false;
    if (scoring.front.length > 0 && !this.front.excludes(prospect)) return false;
    this.tally.outranked += combinationsOf(this.path.domains[stage]!);
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
