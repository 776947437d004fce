import { type Aim, addedScore, scoreOf, type Totals, vectorOf, type Weights } from "./Objective.ts";
import type { CandidateKind } from "./SearchSpace.ts";
import type { Prospect } from "./Standings.ts";

/** Parts of one kind that are still in the running, with the best that any of them offers in each respect. */
export interface Domain {
  /** Indices of the parts, those first that are tried first. */
  readonly options: readonly number[];
  readonly leastAdded: number;
  readonly leastCost: number;
  readonly leastMass: number;
  readonly leastTime: number;
  readonly firstId: number;
  /** By the index of a part the greatest margin that it leaves; undefined where margins do not count. */
  readonly margins: Float64Array | undefined;
  readonly mostMargin: number;
}

interface Terms {
  readonly added: Float64Array;
  readonly cost: Float64Array;
  readonly mass: Float64Array;
  readonly time: Float64Array;
}

/** Masses are compared in whole micrograms: sums of whole numbers do not depend on their order. */
const PER_KG = 1e9;

/** Part by which a weighted sum may be off, since its order differs. */
const ROUNDING = 1e-9;

/** What the parts weigh, cost and take, and what a choice of some of them can come to. */
export class Scoring {
  readonly weights: Weights;
  /** Aims of the front. */
  readonly front: readonly Aim[];
  /** Whether margins have a say in what is best. */
  readonly marginCounts: boolean;
  private readonly terms: readonly Terms[];

  /** @param kinds every kind, in the order of the build file */
  constructor(kinds: readonly CandidateKind[], weights: Weights, front: readonly Aim[]) {
    this.weights = weights;
    this.front = front;
    this.marginCounts = weights.margin > 0 || front.includes("margin");
    this.terms = kinds.map(({ candidates }) => {
      const cost = Float64Array.from(candidates, ({ price = 0 }) => price);
      const mass = Float64Array.from(candidates, ({ totalMass = 0 }) => Math.round(totalMass * PER_KG));
      const time = Float64Array.from(candidates, ({ leadTime = 0 }) => leadTime);
      const added = cost.map((each, index) =>
        addedScore(weights, { cost: each, mass: mass[index]! / PER_KG }),
      );
      return { added, cost, mass, time };
    });
  }

  /** Every part of a kind, those first that promise the best score. */
  whole(kind: number): Domain {
    const { added, time } = this.terms[kind]!;
    const promise = (option: number) => added[option]! + this.weights.time * time[option]!;
    const options = Array.from(added.keys()).sort((a, b) => promise(a) - promise(b) || a - b);
    const margins = this.marginCounts ? new Float64Array(options.length).fill(Infinity) : undefined;
    return this.domain(kind, options, margins);
  }

  /** The same parts, those first that leave the widest margin where that decides. Of equal ones the order stays. */
  inOrder(options: readonly number[], margins: Float64Array): readonly number[] {
    return this.weights.margin === 0 ? options : [...options].sort((a, b) => margins[b]! - margins[a]! || 0);
  }

  /**
   * Some parts of a kind.
   * @param options in the order in which they are tried
   */
  domain(kind: number, options: readonly number[], margins: Float64Array | undefined): Domain {
    const { added, cost, mass, time } = this.terms[kind]!;
    const least = (terms: Float64Array) => {
      let least = Infinity;
      for (const option of options) least = Math.min(least, terms[option]!);
      return least;
    };
    return {
      options,
      leastAdded: least(added),
      leastCost: least(cost),
      leastMass: least(mass),
      leastTime: least(time),
      firstId: options.reduce((first, option) => Math.min(first, option), Infinity),
      margins,
      mostMargin:
        margins === undefined
          ? Infinity
          : options.reduce((most, option) => Math.max(most, margins[option]!), -Infinity),
    };
  }

  /** What a whole choice comes to, always added up in the order of the kinds. */
  totals(chosen: ArrayLike<number>, margin: number | undefined): Totals {
    let [cost, mass, time] = [0, 0, 0];
    for (const [kind, terms] of this.terms.entries()) {
      const option = chosen[kind]!;
      cost += terms.cost[option]!;
      mass += terms.mass[option]!;
      time = Math.max(time, terms.time[option]!);
    }
    return { cost, mass: mass / PER_KG, time, margin };
  }

  /**
   * The best that can come of a branch.
   * @param domains by kind, undefined where a part is chosen
   * @param margin the greatest that the margin can be by what is chosen
   */
  prospect(chosen: Int32Array, domains: readonly (Domain | undefined)[], margin: number): Prospect {
    let [cost, mass, time, most] = [0, 0, 0, margin];
    const first: number[] = [];
    for (const [kind, terms] of this.terms.entries()) {
      const domain = domains[kind];
      const option = chosen[kind]!;
      cost += domain?.leastCost ?? terms.cost[option]!;
      mass += domain?.leastMass ?? terms.mass[option]!;
      time = Math.max(time, domain?.leastTime ?? terms.time[option]!);
      most = Math.min(most, domain?.mostMargin ?? Infinity);
      first.push(domain?.firstId ?? option);
    }
    const totals: Totals = { cost, mass: mass / PER_KG, time, margin };
    return {
      score: this.scoreBound(chosen, domains, totals),
      vector: vectorOf(this.front, totals),
      chosen: first,
    };
  }

  private scoreBound(chosen: Int32Array, domains: readonly (Domain | undefined)[], best: Totals): number {
    const { cost, mass } = this.weights;
    // A sum of cost and mass has its least where one part is least in both together.
    if (cost === 0 || mass === 0) return scoreOf(this.weights, best);
    let added = 0;
    for (const [kind, terms] of this.terms.entries())
      added += domains[kind]?.leastAdded ?? terms.added[chosen[kind]!]!;
    return added - ROUNDING * added + scoreOf({ ...this.weights, cost: 0, mass: 0 }, best);
  }
}
