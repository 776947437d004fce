import type { RuleExample } from "@trialfit/rules";
import { leavesOf } from "../../judge/CompiledRule.ts";
import type { Lookup } from "../../judge/decide.ts";
import { decideWithMissing, withLimits } from "../../judge/decideRule.ts";
import { exampleLookup } from "../../judge/judgeExample.ts";
import { InputError } from "../../read/Problem.ts";
import type { AuthorIssue, CheckedRule } from "../RuleProblem.ts";

type Outcome = { readonly lookup: Lookup } | { readonly issues: readonly AuthorIssue[] };

function read({ rule }: CheckedRule, example: RuleExample, index: number): Outcome {
  const at = ["examples", index, "given"];
  try {
    return { lookup: exampleLookup(rule.facts, example) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const issues = error.problems.map(({ field, found, expected, didYouMean }): AuthorIssue => {
      const isOwn = Object.hasOwn(example.given, field);
      const key = !isOwn || found.startsWith("the unknown field");
      const path = isOwn ? [...at, field] : at;
      const said = isOwn || field === "" ? found : `${field}: ${found}`;
      const issue = { kind: "unreadable-example", path, key, found: said, expected } as const;
      return didYouMean === undefined ? issue : { ...issue, didYouMean };
    });
    return { issues };
  }
}

function checkClaims(
  { rule }: CheckedRule,
  example: RuleExample,
  lookup: Lookup,
  index: number,
): readonly AuthorIssue[] {
  const { verdict, missing } = decideWithMissing(rule, lookup);
  if (verdict !== example.verdict) {
    const found = `"${example.verdict}" for "${example.name}", where the rule says "${verdict}"`;
    const expected = `verdict: ${verdict}, other values, or another rule`;
    return [{ kind: "wrong-verdict", path: ["examples", index, "verdict"], found, expected }];
  }
  const claimed = example.missing === undefined ? missing : [...example.missing].sort();
  if (claimed.join() === missing.join()) return [];
  const found = `${claimed.join(", ") || "nothing"}, where ${missing.join(", ") || "nothing"} is missing`;
  const expected = `missing: [${missing.join(", ")}]`;
  return [{ kind: "wrong-missing", path: ["examples", index, "missing"], found, expected }];
}

/** On which side of a limit an example lies: 1 inside, 0 on it, -1 outside; undefined where it does not say. */
function sidesOf({ rule }: CheckedRule, lookup: Lookup): readonly (readonly [limit: string, side: number])[] {
  const scoped = withLimits(rule, lookup);
  return [rule.when, rule.requires].flatMap(leavesOf).flatMap((leaf) => {
    if (leaf.value.kind !== "fact") return [];
    const [left, right] = [scoped(leaf.fact), scoped(leaf.value.fact)];
    if (left.kind !== "band" || right.kind !== "band") return [];
    const margin = (leaf.operator.startsWith("greater") ? 1 : -1) * (left.nominal - right.nominal);
    const slack = 1e-9 * Math.abs(right.nominal) + 1e-15;
    return [[leaf.value.fact, Math.abs(margin) <= slack ? 0 : Math.sign(margin)] as const];
  });
}

function checkKinds(checked: CheckedRule, lookups: readonly Lookup[]): readonly AuthorIssue[] {
  const { file, rule } = checked;
  const issues: AuthorIssue[] = [];
  const seen = lookups.flatMap((lookup) => sidesOf(checked, lookup));
  for (const { fact } of rule.limits) {
    const sides = [1, 0, -1].filter((side) => !seen.some(([limit, at]) => limit === fact && at === side));
    if (sides.length === 0) continue;
    const words = sides.map((side) => ["outside", "on", "inside"][side + 1]).join(" and none ");
    const found = `no example ${words} ${fact}`;
    const expected = "one just inside, one on and one just outside every limit";
    issues.push({ kind: "no-example-at-limit", path: ["limits", fact.slice(6)], key: true, found, expected });
  }
  const none = (verdict: string) => !file.examples.some((example) => example.verdict === verdict);
  const lacks = (kind: AuthorIssue["kind"], verdict: string, expected: string) =>
    issues.push({ kind, path: ["examples"], key: true, found: `no example that is ${verdict}`, expected });
  if (none("unknown")) lacks("no-unknown-example", "unknown", "one that leaves out an input");
  if (file.when !== undefined && none("not-applicable"))
    lacks("no-not-applicable-example", "not-applicable", "one that `when` leaves out");
  return issues;
}

/** Every example can be read and says what the rule says, and the kinds that tell a reader most are there. */
export function checkExamples(checked: CheckedRule): readonly AuthorIssue[] {
  const { examples } = checked.file;
  const lookups: Lookup[] = [];
  const issues = examples.flatMap((example, index): readonly AuthorIssue[] => {
    const twin = examples.findIndex((other) => other.name === example.name);
    const path = ["examples", index, "name"];
    const expected = "a name that says what sets the example apart";
    const same: readonly AuthorIssue[] =
      twin === index ? [] : [{ kind: "same-name", path, found: `"${example.name}" twice`, expected }];
    const outcome = read(checked, example, index);
    if ("issues" in outcome) return [...same, ...outcome.issues];
    lookups.push(outcome.lookup);
    return [...same, ...checkClaims(checked, example, outcome.lookup, index)];
  });
  return [...issues, ...checkKinds(checked, lookups)];
}
