import { coversAll } from "./Objective.ts";

/** A combination in the running: the index of the chosen part of every kind, in the order of the kinds and of ids. */
export interface Entry {
  readonly chosen: readonly number[];
  /** The smaller the better. */
  readonly score: number;
  /** By each aim of the front, the smaller the better. */
  readonly vector: readonly number[];
}

/** Below zero when the ids of the first come before those of the other, kind by kind. */
export type CompareChosen = (a: readonly number[], b: readonly number[]) => number;

/** @param order indices of the kinds, the one first that decides first */
export function compareIn(order: readonly number[]): CompareChosen {
  return (a, b) => {
    for (let at = 0; at < order.length; at += 1) {
      const difference = a[order[at]!]! - b[order[at]!]!;
      if (difference !== 0) return difference;
    }
    return 0;
  };
}

/** What is known of all combinations that could still come of a branch. */
export interface Prospect {
  /** None of them has a better score. */
  readonly score: number;
  /** None of them is better in any aim of the front. */
  readonly vector: readonly number[];
  /** None of them has ids before these. */
  readonly chosen: readonly number[];
}

/** The best few, by score and then by ids: which ones they are does not depend on the order in which they come. */
export class BestFew {
  readonly entries: Entry[] = [];
  private readonly count: number;
  private readonly compareChosen: CompareChosen;

  constructor(count: number, compareChosen: CompareChosen) {
    this.count = count;
    this.compareChosen = compareChosen;
  }

  private compare(a: Entry, b: Entry): number {
    return a.score === b.score ? this.compareChosen(a.chosen, b.chosen) : a.score < b.score ? -1 : 1;
  }

  add(entry: Entry): void {
    if (this.count === 0) return;
    const worst = this.entries[this.count - 1];
    if (worst !== undefined && this.compare(entry, worst) >= 0) return;
    const at = this.entries.findIndex((other) => this.compare(entry, other) < 0);
    this.entries.splice(at < 0 ? this.entries.length : at, 0, entry);
    if (this.entries.length > this.count) this.entries.pop();
  }

  /** Whether nothing that a branch holds can come among them. */
  excludes({ score, chosen }: Pick<Prospect, "score" | "chosen">): boolean {
    if (this.count === 0) return true;
    const worst = this.entries[this.count - 1];
    if (worst === undefined || score < worst.score) return false;
    return score > worst.score || this.compareChosen(chosen, worst.chosen) >= 0;
  }
}

/** Combinations that no other beats in every aim; of those that are alike in all aims the one whose ids come first. */
export class Front {
  entries: Entry[] = [];
  private readonly compareChosen: CompareChosen;

  constructor(compareChosen: CompareChosen) {
    this.compareChosen = compareChosen;
  }

  add(entry: Entry): void {
    for (const other of this.entries)
      if (coversAll(other.vector, entry.vector)) {
        const alike = coversAll(entry.vector, other.vector);
        if (!alike || this.compareChosen(other.chosen, entry.chosen) <= 0) return;
      }
    this.entries = this.entries.filter(({ vector }) => !coversAll(entry.vector, vector));
    this.entries.push(entry);
  }

  /** In an order of its own: by the vector, then by ids. */
  sorted(): readonly Entry[] {
    return [...this.entries].sort((a, b) => {
      const at = a.vector.findIndex((value, index) => value !== b.vector[index]);
      return at < 0 ? this.compareChosen(a.chosen, b.chosen) : a.vector[at]! - b.vector[at]!;
    });
  }

  /** Whether nothing that a branch holds can come among them. */
  excludes({ vector, chosen }: Pick<Prospect, "vector" | "chosen">): boolean {
    return this.entries.some(
      (other) =>
        coversAll(other.vector, vector) &&
        (!coversAll(vector, other.vector) || this.compareChosen(other.chosen, chosen) <= 0),
    );
  }
}
