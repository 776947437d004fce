import type { FieldValue } from "./FieldValue.ts";

/** One candidate combination of parts, read and in SI. */
export interface Build {
  readonly name: string;
  /** By field path: `block.bore`. A dimension with a place has its word under `<path>.place`. */
  readonly values: ReadonlyMap<string, FieldValue>;
  /** Where it was read from, for people. */
  readonly file: string | undefined;
}
