import type { Rests } from "../planQuantities.ts";

/** Numbers combinations of parts by what something can tell of them: equal numbers, equal combinations to it. */
export class TupleKeys {
  /** Different combinations of the first levels that it rests on, by how many levels: 1 for none. */
  readonly counts: readonly number[];
  private readonly levels: readonly number[];
  private readonly classes: readonly Int32Array[];

  constructor({ levels, classes }: Rests) {
    this.levels = levels;
    this.classes = classes.map(({ of }) => of);
    const counts = [1];
    for (const { count } of classes) counts.push(counts.at(-1)! * count);
    this.counts = counts;
  }

  /** How many of its levels are chosen. @param chosen levels that are, from the first */
  depth(chosen: number): number {
    let depth = 0;
    while (depth < this.levels.length && this.levels[depth]! < chosen) depth += 1;
    return depth;
  }

  /**
   * The number of the combination that is chosen, from 0; only while `counts` at that depth is a safe integer.
   * @param depth how many of its levels count
   */
  key(options: Int32Array, depth = this.levels.length): number {
    let key = 0;
    for (let index = 0; index < depth; index += 1)
      key += this.classes[index]![options[this.levels[index]!]!]! * this.counts[index]!;
    return key;
  }
}
