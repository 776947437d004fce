import type { Domain } from "./Scoring.ts";

/** Where in the tree of choices a walk is: level by level what can be chosen, and what is next. */
export class Path {
  /** By the number of chosen kinds: what is left of each kind; undefined for chosen ones. */
  readonly domains: (Domain | undefined)[][] = [];
  /** Below zero: all is done. */
  level = 0;
  private readonly order: readonly number[];
  /** By level, the position in its domain of what is to be tried next. */
  private readonly positions: number[] = [0];

  /** @param order indices of the kinds, in the order in which they are chosen */
  constructor(order: readonly number[]) {
    this.order = order;
  }

  /** What is to be tried next; undefined where nothing is left on this level. */
  get next(): number | undefined {
    return this.options(this.level)[this.positions[this.level]!];
  }

  /** Goes to the level below. */
  descend(): void {
    this.level += 1;
    this.positions[this.level] = 0;
  }

  /** Goes on to the next choice of this level. */
  advance(): void {
    this.positions[this.level]! += 1;
  }

  /** Goes on in the level above. */
  ascend(): void {
    this.level -= 1;
    if (this.level >= 0) this.advance();
  }

  /** Part of the way that is behind, 0 to 1. */
  get progress(): number {
    let [sum, share] = [0, 1];
    for (let level = 0; level <= this.level; level += 1) {
      const count = Math.max(1, this.options(level).length);
      sum += (share * this.positions[level]!) / count;
      share /= count;
    }
    return this.level < 0 ? 1 : Math.min(1, sum);
  }

  /** The choice that is next, level by level; −1 where nothing is left on a level. */
  get place(): readonly number[] {
    return Array.from(
      { length: this.level + 1 },
      (_, level) => this.options(level)[this.positions[level]!] ?? -1,
    );
  }

  /** Puts an option of a level next. @throws RangeError when it is none */
  point(level: number, option: number): void {
    const options = this.options(level);
    const at = option < 0 ? options.length : options.indexOf(option);
    if (at < 0) throw new RangeError("this is no place of this search");
    this.positions[level] = at;
    this.level = level;
  }

  private options(level: number): readonly number[] {
    return this.domains[level]![this.order[level]!]!.options;
  }
}
