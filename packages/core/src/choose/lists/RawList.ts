import type { Problem } from "../../read/Problem.ts";

/** Line and column in a file, both from 1. */
export interface Place {
  readonly line: number | undefined;
  readonly column: number | undefined;
}

/** What is wrong, but for the file, which all share. */
export type Flaw = Omit<Problem, "file" | "line" | "column"> & { readonly place: Place };

/** What is written in one place of a list, before anything is made of it. */
export interface RawCell {
  /** Text, or in YAML and JSON whatever stands there. */
  readonly value: unknown;
  /** Looked up only for messages. */
  readonly place: () => Place;
}

export interface RawRow {
  /** From 1, as people count the parts of a list. */
  readonly number: number;
  readonly place: () => Place;
  readonly cells: ReadonlyMap<string, RawCell>;
}

/** A list as it is written, the same for CSV, YAML and JSON. */
export interface RawList {
  readonly file: string;
  /** `part`, `about`, `keep`. */
  readonly head: ReadonlyMap<string, RawCell>;
  /** Columns by name, each with the unit that stands in its head, if any. */
  readonly columns: ReadonlyMap<string, { readonly unit: string | undefined; readonly place: () => Place }>;
  readonly rows: readonly RawRow[];
  /** What is wrong already with how it is written; the rows are those that could be told apart. */
  readonly flaws: readonly Flaw[];
}

/** What is read at most of a list: it comes from a stranger, and all of it is kept in memory. */
export const listLimits = {
  /** Characters of a file. */
  characters: 16 * 1024 * 1024,
  parts: 50_000,
  columns: 300,
  /** Characters of a cell. */
  cell: 8_000,
} as const;
