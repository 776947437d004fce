import type { FieldValue } from "../../read/FieldValue.ts";
import type { PartKind } from "../PartialJudge.ts";

/** Options of a kind by what tells them apart, as far as it matters for something. */
export interface Classes {
  /** Of each option, the number of its class: from 0 in the order in which they first come. */
  readonly of: Int32Array;
  readonly count: number;
}

/** A value without what no quantity and no rule can tell: from where it came in words. */
function essence(value: FieldValue | undefined): string {
  if (value === undefined) return "";
  return JSON.stringify(value, (key, one) => (key === "note" || key === "instrument" ? undefined : one));
}

/** Tells the options of kinds apart by some of their fields: those with equal values there are one class. */
export class PartClasses {
  /** Fields of each kind: those that any of its options gives. */
  readonly fields: readonly ReadonlySet<string>[];
  private readonly kinds: readonly PartKind[];
  private readonly known: readonly Map<string, Classes>[];
  /** By kind and field: the number of each option's value. */
  private readonly numbers: readonly Map<string, Int32Array>[];

  constructor(kinds: readonly PartKind[]) {
    this.kinds = kinds;
    this.fields = kinds.map(({ options }) => new Set(options.flatMap(({ values }) => [...values.keys()])));
    this.known = kinds.map(() => new Map());
    this.numbers = kinds.map(() => new Map());
  }

  private numbersOf(kind: number, path: string): Int32Array {
    let numbers = this.numbers[kind]!.get(path);
    if (numbers === undefined) {
      const seen = new Map<string, number>();
      numbers = Int32Array.from(this.kinds[kind]!.options, ({ values }) => {
        const text = essence(values.get(path));
        const number = seen.get(text) ?? seen.size;
        seen.set(text, number);
        return number;
      });
      this.numbers[kind]!.set(path, numbers);
    }
    return numbers;
  }

  /** Classes by the values of those of some fields that belong to a kind. */
  by(kind: number, paths: ReadonlySet<string>): Classes {
    const own = [...this.fields[kind]!].filter((path) => paths.has(path)).sort();
    const key = own.join(" ");
    let classes = this.known[kind]!.get(key);
    if (classes === undefined) {
      const columns = own.map((path) => this.numbersOf(kind, path));
      const seen = new Map<string, number>();
      const of = Int32Array.from(this.kinds[kind]!.options, (_, option) => {
        const text = columns.map((column) => column[option]).join();
        const number = seen.get(text) ?? seen.size;
        seen.set(text, number);
        return number;
      });
      classes = { of, count: seen.size };
      this.known[kind]!.set(key, classes);
    }
    return classes;
  }
}
