import { numberOfValue } from "../../derive/numberOfValue.ts";
import type { FieldValue } from "../../read/FieldValue.ts";

/** What is chosen among: for each kind its options' fields by path. */
export interface Options {
  readonly values: ReadonlyMap<string, FieldValue>;
}

/** Groups of options between which some fields cannot tell: the group of each option, counted from 0. */
function groupsOf(
  options: readonly Options[],
  paths: readonly string[],
): { groups: Int32Array; count: number } {
  const numbers = new Map<string, number>();
  const groups = Int32Array.from(options, ({ values }) => {
    const key = paths.map((path) => numberOfValue(path, values.get(path))).join();
    const number = numbers.get(key) ?? numbers.size;
    numbers.set(key, number);
    return number;
  });
  return { groups, count: numbers.size };
}

/**
 * What some fields can tell of a choice: of each kind that gives any of them, which of the groups of like parts the
 * chosen one is in. Choices with the same key are the same to whatever rests on these fields alone.
 */
export class Projection {
  /** Indices of the kinds that have a say, ascending. */
  readonly kinds: readonly number[];
  /** How many keys there are. */
  readonly size: number;
  private readonly groups: readonly Int32Array[];
  private readonly strides: readonly number[];

  constructor(kinds: readonly (readonly Options[])[], fields: Iterable<string>) {
    const wanted = [...fields].sort();
    const telling: { kind: number; groups: Int32Array; count: number }[] = [];
    for (const [kind, options] of kinds.entries()) {
      const paths = wanted.filter((path) => options.some(({ values }) => values.has(path)));
      if (paths.length > 0) telling.push({ kind, ...groupsOf(options, paths) });
    }
    this.kinds = telling.map(({ kind }) => kind);
    this.groups = telling.map(({ groups }) => groups);
    let size = 1;
    this.strides = telling.map(({ count }) => {
      const stride = size;
      size *= count;
      return stride;
    });
    this.size = size;
  }

  /** @param chosen index of the option of every kind; only those of `kinds` are looked at */
  key(chosen: Int32Array): number | string {
    // Whole numbers beyond the safe ones run together.
    if (this.size > Number.MAX_SAFE_INTEGER)
      return this.kinds.map((kind, at) => this.groups[at]![chosen[kind]!]!).join();
    let key = 0;
    for (let at = 0; at < this.kinds.length; at += 1)
      key += this.strides[at]! * this.groups[at]![chosen[this.kinds[at]!]!]!;
    return key;
  }
}
