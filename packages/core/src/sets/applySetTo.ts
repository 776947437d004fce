import type { RuleFile, SetFile } from "@trialfit/rules";
import type { AppliedSet, Departure } from "../judge/AppliedSet.ts";
import { formatIssue } from "../judge/RuleIssue.ts";
import { nearestWord } from "../read/nearestWord.ts";
import { describeCondition } from "../report/describeCondition.ts";
import { changeLimit } from "./changeLimit.ts";
import { checkSet } from "./checkSet.ts";
import { findChain, SetError } from "./findChain.ts";

/** What a set is applied to. */
export interface RuleCatalog {
  readonly rules: readonly RuleFile[];
  readonly sets: readonly SetFile[];
}

interface Step {
  readonly rules: readonly RuleFile[];
  readonly departures: readonly Departure[];
}

function applyOne({ rules, departures }: Step, set: SetFile): Step {
  const problems = checkSet(set, rules);
  if (problems.length > 0) throw new SetError(set.id, problems.map(formatIssue).join("; "));
  const changed = new Map([...rules, ...(set.rules ?? [])].map((rule) => [rule.id, rule]));
  const made: Departure[] = set.use === undefined ? [] : [{ kind: "use", set: set.id, use: set.use }];
  for (const { id } of set.rules ?? []) made.push({ kind: "rule", set: set.id, rule: id });
  for (const change of set.limits ?? []) {
    const rule = changed.get(change.rule)!;
    const { file, outsideRange } = changeLimit(rule, change);
    changed.set(change.rule, file);
    const { value, cases } = rule.limits![change.limit]!;
    made.push({
      kind: "limit",
      set: set.id,
      rule: change.rule,
      limit: change.limit,
      from:
        cases === undefined
          ? value
          : `${value}, and ${cases.map((one) => one.value).join(", ")} in its cases`,
      to: change.value,
      ...(change.when === undefined ? {} : { when: describeCondition(change.when) }),
      outsideRange,
      because: change.because,
      by: change.by,
    });
  }
  for (const { rule, because, by } of set.silence ?? [])
    made.push({ kind: "silence", set: set.id, rule, because, by });
  return { rules: [...changed.values()], departures: [...departures, ...made] };
}

/** The set of this name among those given and those shipped. @throws SetError when there is none */
function named(name: string, known: readonly SetFile[]): SetFile {
  const set = known.find(({ id }) => id === name);
  if (set !== undefined) return set;
  const near = nearestWord(
    name,
    known.map(({ id }) => id),
  );
  throw new SetError(name, `no set has this name${near === undefined ? "" : `; did you mean "${near}"?`}`);
}

/**
 * A set with all that it inherits.
 * @param sets names of known sets or sets as data; the last is applied, the others may be extended by it
 * @param catalog rules with which the first set of the chain begins, and sets that can be named
 * @throws SetError when a set is not known, extends itself, or names rules, limits or values that cannot be
 */
export function applySetTo(
  sets: readonly (string | SetFile)[],
  { rules, sets: shipped }: RuleCatalog,
): AppliedSet {
  const given = sets.filter((one): one is SetFile => typeof one !== "string");
  const known = [...given, ...shipped.filter(({ id }) => !given.some((one) => one.id === id))];
  const last = sets.at(-1);
  if (last === undefined) throw new SetError("sets", "none is named");
  const chain = findChain(typeof last === "string" ? named(last, known) : last, known);
  const step = chain.reduce(applyOne, { rules, departures: [] });
  const silenced = step.departures.flatMap((one) => (one.kind === "silence" ? [one.rule] : []));
  const { id, title } = chain.at(-1)!;
  return {
    id,
    title,
    chain,
    rules: step.rules,
    silenced: new Set(silenced),
    use: chain.findLast((one) => one.use !== undefined)?.use,
    departures: step.departures,
  };
}
