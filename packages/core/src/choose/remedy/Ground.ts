import type { FieldValue } from "../../read/FieldValue.ts";
import type { Judgement } from "./Consequences.ts";
import type { Standing } from "./Standing.ts";

/** What both ways of changing one dimension have in common. */
export interface Ground {
  /** The build as it is. */
  readonly base: Standing;
  /** Its fields, defaults filled in. */
  readonly values: ReadonlyMap<string, FieldValue>;
  readonly path: string;
  /** Every rule that rests on the dimension. */
  readonly judgements: readonly Judgement[];
}
