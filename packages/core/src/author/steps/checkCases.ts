import type { CompiledLimit, ConditionNode } from "../../judge/CompiledRule.ts";
import { canHold, opposite } from "../logic/canHold.ts";
import type { AuthorIssue, CheckedRule } from "../RuleProblem.ts";

/** Whether some build gets another value from the limit because this case is there. */
function changesSomething(limit: CompiledLimit, index: number, before: readonly ConditionNode[]): boolean {
  const own = limit.cases[index]!;
  const passed = [...before, own.when];
  for (const later of limit.cases.slice(index + 1)) {
    if (later.value !== own.value && canHold([...passed, later.when], [])) return true;
    passed.push(opposite(later.when));
  }
  return limit.value !== own.value && canHold(passed, []);
}

function checkLimit(limit: CompiledLimit, when: readonly ConditionNode[]): readonly AuthorIssue[] {
  const name = limit.fact.replace(/^limit\./, "");
  const before = [...when];
  return limit.cases.flatMap((one, index): readonly AuthorIssue[] => {
    const path = ["limits", name, "cases", index];
    const earlier = [...before];
    before.push(opposite(one.when));
    if (!canHold([one.when], [])) return [];
    if (!canHold([...earlier, one.when], [])) {
      const found = `a case of ${one.text} that never applies: ${index === 0 ? "`when`" : "what stands before it"} leaves nothing to it`;
      const expected = "narrower cases first, and none outside the rule's `when`";
      return [{ kind: "case-never-applies", path, found, expected }];
    }
    if (changesSomething(limit, index, earlier)) return [];
    const found = `a case of ${one.text}, which is the value without it`;
    return [{ kind: "case-changes-nothing", path, found, expected: "cases that change the limit" }];
  });
}

/** Every case of every limit applies to some build, and changes the limit there. */
export function checkCases({ rule }: CheckedRule): readonly AuthorIssue[] {
  const when = rule.when === undefined ? [] : [rule.when];
  return rule.limits.flatMap((limit) => checkLimit(limit, when));
}
