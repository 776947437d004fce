import type { Confirmation } from "./confirmations.ts";
import type { FieldValue } from "./FieldValue.ts";

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
  /** Where it was read from, for people. */
  readonly file: string | undefined;
}
