import type { Confirmation } from "./confirmations.ts";
import type { FieldValue } from "./FieldValue.ts";
import type { WantedValue, WrittenAim } from "./WantedValue.ts";

/** One candidate combination of parts, read and in SI. */
export interface Build {
  readonly name: string;
  /**
   * By field path: `block.bore`. A dimension with a place has its word under `<path>.place`, a confirmation its yes
   * or no under `confirmations.<rule>`.
   */
  readonly values: ReadonlyMap<string, FieldValue>;
  /** What a person confirmed, by the id of the rule that asks for it. */
  readonly confirmations: ReadonlyMap<string, Confirmation>;
  /** Dimensions that are to be found, by field path; `values` has none of them. */
  readonly wanted: ReadonlyMap<string, WantedValue>;
  /** What the wanted dimensions are to reach, by the id of a quantity. */
  readonly aims: ReadonlyMap<string, WrittenAim>;
  /** Where it was read from, for people. */
  readonly file: string | undefined;
}
