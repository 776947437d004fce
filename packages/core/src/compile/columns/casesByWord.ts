import type { CompiledLimit } from "../../judge/CompiledRule.ts";
import type { FactSlots } from "../FactSlots.ts";
import { wordOutcomes } from "../RuleCompiler.ts";

/** Cases that all ask for a word of one and the same fact. */
export interface CasesByWord {
  readonly slot: number;
  /** Of each case, by the number of the word. */
  readonly outcomes: readonly Uint8Array[];
}

/** For a limit whose cases each ask for a word of one and the same fact: that fact, and what each comes to. */
export function casesByWord({ cases }: CompiledLimit, slots: FactSlots): CasesByWord | undefined {
  const leaves = cases.map(({ when }) => when);
  const [first] = leaves;
  if (first?.kind !== "leaf") return undefined;
  const outcomes = leaves.flatMap((leaf) =>
    leaf.kind === "leaf" && leaf.fact === first.fact && leaf.value.kind === "words"
      ? [wordOutcomes(leaf, slots)]
      : [],
  );
  return outcomes.length < cases.length ? undefined : { slot: slots.slotOf(first.fact), outcomes };
}
