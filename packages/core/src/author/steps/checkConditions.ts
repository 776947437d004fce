import type { Comparison, Condition } from "@trialfit/rules";
import type { ConditionNode } from "../../judge/CompiledRule.ts";
import { factType } from "../../judge/factCatalog.ts";
import { RuleReading } from "../../judge/RuleReading.ts";
import { readCondition } from "../../judge/readCondition.ts";
import { canHold, opposite } from "../logic/canHold.ts";
import type { AuthorIssue, CheckedRule } from "../RuleProblem.ts";

type Path = AuthorIssue["path"];

/** A part of a condition as authored, as it is judged, and where it stands. */
interface Part {
  readonly written: Condition;
  readonly node: ConditionNode;
  readonly path: Path;
}

function partOf({ file }: CheckedRule, written: Condition, path: Path): Part {
  return { written, node: readCondition(new RuleReading(file), written, path), path };
}

function members(checked: CheckedRule, { written, path }: Part): readonly Part[] {
  if ("not" in written) return [partOf(checked, written.not, [...path, "not"])];
  if ("all" in written) return written.all.map((one, index) => partOf(checked, one, [...path, "all", index]));
  if ("any" in written) return written.any.map((one, index) => partOf(checked, one, [...path, "any", index]));
  return [];
}

/** The facts of a condition, for a sentence about it. */
function factsOf(node: ConditionNode): string {
  const names = node.kind === "leaf" ? [node.fact] : node.children.map(factsOf);
  return [...new Set(names)].join(", ");
}

/** The innermost part that is at fault, so that the message points at it. */
function culprit(checked: CheckedRule, part: Part, isWrong: (node: ConditionNode) => boolean): Part {
  const inner = members(checked, part).find((one) => !("not" in part.written) && isWrong(one.node));
  return inner === undefined ? part : culprit(checked, inner, isWrong);
}

function needless(checked: CheckedRule, part: Part): readonly AuthorIssue[] {
  const { limits } = checked.rule;
  const parts = members(checked, part);
  const kind = "all" in part.written ? "all" : "any" in part.written ? "any" : undefined;
  const here = parts.flatMap((one): readonly AuthorIssue[] => {
    const others = parts.filter((other) => other !== one).map((other) => other.node);
    if (kind === undefined || others.length === 0) return [];
    const differs =
      kind === "all"
        ? canHold([...others, opposite(one.node)], limits)
        : canHold([one.node, ...others.map(opposite)], limits);
    if (differs) return [];
    const found = `a condition on ${factsOf(one.node)} that the others beside it make needless`;
    return [
      { kind: "says-nothing-new", path: one.path, found, expected: "only conditions that change something" },
    ];
  });
  return here.length > 0 ? here.slice(0, 1) : parts.flatMap((one) => needless(checked, one));
}

function checkOne(checked: CheckedRule, part: Part): readonly AuthorIssue[] {
  const { limits } = checked.rule;
  const impossible = (node: ConditionNode) => !canHold([node], limits);
  const certain = (node: ConditionNode) => !canHold([opposite(node)], limits);
  const never = culprit(checked, part, impossible);
  if (impossible(never.node)) {
    const found = `conditions on ${factsOf(never.node)} that contradict each other or can never be met`;
    return [{ kind: "contradiction", path: never.path, found, expected: "a condition that can hold" }];
  }
  const always = culprit(checked, part, certain);
  if (certain(always.node)) {
    const found = `a condition on ${factsOf(always.node)} that every value meets`;
    return [
      { kind: "always-true", path: always.path, found, expected: "a condition that some value misses" },
    ];
  }
  return needless(checked, part);
}

/** A comparison that lists every word: it holds as soon as the word is there. */
function listsEveryWord(written: Condition): written is Comparison {
  if (!("fact" in written) || written.operator !== "in" || !Array.isArray(written.value)) return false;
  const type = factType(written.fact);
  const { value } = written;
  return type?.kind === "word" && type.options.every((word) => value.includes(word));
}

/** Every condition can hold, can miss, says something new; and the rule as a whole can do both where it is relevant. */
export function checkConditions(checked: CheckedRule): readonly AuthorIssue[] {
  const { file, rule } = checked;
  const requires = partOf(checked, file.requires, ["requires"]);
  const when = file.when === undefined ? [] : [partOf(checked, file.when, ["when"])];
  const cases = Object.entries(file.limits ?? {}).flatMap(([name, limit]) =>
    (limit.cases ?? []).map((one, index) =>
      partOf(checked, one.when, ["limits", name, "cases", index, "when"]),
    ),
  );
  if (listsEveryWord(file.requires)) {
    const found = `every word that ${file.requires.fact} can be`;
    const expected = "that on purpose: the rule holds when it is stated and is unknown when it is not";
    return [{ kind: "asks-if-stated", path: ["requires"], found, expected }];
  }
  const issues = [...when, requires, ...cases].flatMap((part) => checkOne(checked, part));
  if (issues.length > 0 || when.length === 0) return issues;
  const relevant = when.map((part) => part.node);
  if (!canHold([...relevant, opposite(rule.requires)], rule.limits)) {
    const found = "what always holds where the rule is relevant";
    return [{ kind: "never-fails", path: ["requires"], found, expected: "a comparison that can fail" }];
  }
  if (!canHold([...relevant, rule.requires], rule.limits)) {
    const found = "what never holds where the rule is relevant";
    return [{ kind: "never-holds", path: ["requires"], found, expected: "a comparison that can hold" }];
  }
  return [];
}
