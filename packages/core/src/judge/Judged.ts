import type { Chain } from "../derive/Chain.ts";
import type { Derivation } from "../derive/Derivation.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { CompiledRule } from "./CompiledRule.ts";
import type { Settlement } from "./howToSettle.ts";
import type { TraceBand, Verdict, VerdictWord } from "./Verdict.ts";

/** What a rule says at one cylinder, crankpin or main bearing. */
export interface PlaceVerdict {
  /** For people: `cylinder 3`. */
  readonly at: string;
  readonly verdict: VerdictWord;
  readonly nominally: boolean;
  /** The first value that the rule compares there, SI. */
  readonly value?: TraceBand;
}

/** The verdict of a rule, with the values on which it was reached. */
export interface Judged {
  readonly rule: CompiledRule;
  readonly verdict: Verdict;
  readonly values: ReadonlyMap<string, FieldValue>;
  readonly derivations: ReadonlyMap<string, Derivation>;
  /** Its quantities at single values. */
  readonly chain: Chain;
  /** Where dimensions were measured by position: the worst place, and every place. */
  readonly at?: string;
  readonly places?: readonly PlaceVerdict[];
  /** For an open verdict: what would settle it. */
  readonly settlement?: Settlement;
}
