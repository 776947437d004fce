import type { Condition, LimitFile, RuleFile } from "@trialfit/rules";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { readRule } from "../judge/compileRule.ts";
import { limitsDiffer } from "./logic/limitsDiffer.ts";
import type { Mutant } from "./Mutant.ts";
import { moveNumber } from "./moveNumber.ts";
import { mutateCondition } from "./mutateCondition.ts";

/** Every comparison of a condition as authored. */
function* comparisons(condition: Condition): Generator<Extract<Condition, { fact: string }>> {
  if ("not" in condition) yield* comparisons(condition.not);
  else if ("all" in condition) for (const child of condition.all) yield* comparisons(child);
  else if ("any" in condition) for (const child of condition.any) yield* comparisons(child);
  else yield condition;
}

function comparedWith(file: RuleFile, limit: string): string | undefined {
  for (const condition of [file.when, file.requires]) {
    if (condition === undefined) continue;
    for (const { fact, value } of comparisons(condition)) {
      if (typeof value === "object" && !Array.isArray(value) && value.fact === `limit.${limit}`) return fact;
    }
  }
  return undefined;
}

/** A condition that is left out can leave a limit that nothing is compared with. */
function withoutIdleLimits(file: RuleFile): RuleFile {
  if (file.limits === undefined) return file;
  const used = Object.entries(file.limits).filter(([name]) => comparedWith(file, name) !== undefined);
  return { ...file, limits: Object.fromEntries(used) };
}

function limitMutants(file: RuleFile, name: string, limit: LimitFile): readonly Mutant[] {
  const path = ["limits", name];
  const fact = comparedWith(file, name) ?? "";
  const changed = (one: LimitFile): RuleFile => ({ ...file, limits: { ...file.limits, [name]: one } });
  const moves = (text: string, at: Mutant["path"], put: (moved: string) => LimitFile): readonly Mutant[] =>
    moveNumber(text, fact).map((moved) => ({
      kind: "limit-moved",
      path: [...path, ...at],
      change: `${text} read as ${moved}`,
      file: changed(put(moved)),
    }));
  const cases = limit.cases ?? [];
  const replaced = (index: number, one: (typeof cases)[number]): LimitFile => ({
    ...limit,
    cases: cases.map((each, other) => (other === index ? one : each)),
  });
  const swapped = (index: number): LimitFile => ({
    ...limit,
    cases: cases.with(index, cases[index + 1]!).with(index + 1, cases[index]!),
  });
  return [
    ...moves(limit.value, ["value"], (value) => ({ ...limit, value })),
    ...cases.slice(1).map(
      (later, index): Mutant => ({
        kind: "cases-swapped",
        path: [...path, "cases", index + 1],
        change: `the case of ${later.value} read before that of ${cases[index]!.value}`,
        file: changed(swapped(index)),
      }),
    ),
    ...cases.flatMap((one, index): readonly Mutant[] => {
      const { cases: _, ...bare } = limit;
      const left = cases.filter((_one, other) => other !== index);
      return [
        {
          kind: "case-dropped",
          path: [...path, "cases", index],
          change: `the case of ${one.value} left out`,
          file: changed(left.length === 0 ? bare : { ...limit, cases: left }),
        },
        ...moves(one.value, ["cases", index, "value"], (value) => replaced(index, { ...one, value })),
        ...mutateCondition(one.when, [...path, "cases", index, "when"]).map(({ condition, ...mutant }) => ({
          ...mutant,
          file: changed(replaced(index, { ...one, when: condition })),
        })),
      ];
    }),
  ];
}

/** Changes of a case that need not change anything: an earlier case may have taken the word, cases may never meet. */
const MAY_BE_ALIKE: ReadonlySet<Mutant["kind"]> = new Set(["cases-swapped", "word-added"]);

/** Whether the change gives every build the limit that it had. */
function isAlike(file: RuleFile, { kind, path, file: changed }: Mutant): boolean {
  if (!MAY_BE_ALIKE.has(kind) || path[0] !== "limits") return false;
  const [own, other] = [readRule(file).rule, readRule(changed).rule];
  const limitOf = (rule: CompiledRule) => rule.limits.find(({ fact }) => fact === `limit.${path[1]}`);
  const [before, after] = [limitOf(own), limitOf(other)];
  return before !== undefined && after !== undefined && !limitsDiffer(before, after, own.when);
}

/**
 * Every rule that differs from this one by a single slip: a number moved by one unit of its second digit, a
 * comparison turned round or moved across its edge, a condition, a case, a word, `not` or `when` left out,
 * a word more in a choice, two neighbouring cases in the other order. Each
 * that the rule's examples do not notice is a slip that nobody would notice.
 */
export function mutateRule(file: RuleFile): readonly Mutant[] {
  const { when, ...always } = file;
  const mutants: Mutant[] = mutateCondition(file.requires, ["requires"]).map(({ condition, ...mutant }) => ({
    ...mutant,
    file: { ...file, requires: condition },
  }));
  if (when !== undefined) {
    mutants.push({ kind: "when-dropped", path: ["when"], change: "`when` left out", file: always });
    for (const { condition, ...mutant } of mutateCondition(when, ["when"]))
      mutants.push({ ...mutant, file: { ...file, when: condition } });
  }
  for (const [name, limit] of Object.entries(file.limits ?? {}))
    mutants.push(...limitMutants(file, name, limit));
  return mutants
    .map((mutant) => ({ ...mutant, file: withoutIdleLimits(mutant.file) }))
    .filter((mutant) => !isAlike(file, mutant));
}
