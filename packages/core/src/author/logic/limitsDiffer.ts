import type { CompiledLimit, ConditionNode } from "../../judge/CompiledRule.ts";
import { canHold, opposite } from "./canHold.ts";

interface Way {
  readonly conditions: readonly ConditionNode[];
  readonly value: number;
}

/** Each value that a limit can take, with the conditions under which it does: its cases in their order, then itself. */
function waysOf({ cases, value }: CompiledLimit): readonly Way[] {
  const passed: ConditionNode[] = [];
  const ways = cases.map((one): Way => {
    const conditions = [...passed, one.when];
    passed.push(opposite(one.when));
    return { conditions, value: one.value };
  });
  return [...ways, { conditions: passed, value }];
}

/**
 * Whether some build that a rule concerns gets one value from the one limit and another from the other. `false` is
 * certain, as in `canHold`.
 */
export function limitsDiffer(
  one: CompiledLimit,
  other: CompiledLimit,
  when: ConditionNode | undefined,
): boolean {
  const relevant = when === undefined ? [] : [when];
  const others = waysOf(other);
  return waysOf(one).some((way) =>
    others.some(
      ({ conditions, value }) =>
        value !== way.value && canHold([...relevant, ...way.conditions, ...conditions], []),
    ),
  );
}
