import { type CompiledRule, type ConditionNode, type Leaf, leavesOf, placedLeaves } from "./CompiledRule.ts";
import { compare, isNumeric } from "./compare.ts";
import { decide, type Lookup, operandOf } from "./decide.ts";
import { withLimits, wordFor } from "./decideRule.ts";
import type { BandFact, Fact } from "./Fact.ts";
import { factType } from "./factCatalog.ts";
import { namedMissing } from "./namedMissing.ts";
import { rememberedVerdict, rememberVerdict } from "./rememberVerdict.ts";
import { type Answers, type Question, runEngine } from "./runEngine.ts";
import type { Comparison, TraceBand, Verdict } from "./Verdict.ts";

type PlacedLeaf = ReturnType<typeof placedLeaves>[number];

interface Scope {
  readonly rule: CompiledRule;
  readonly lookup: Lookup;
  readonly name: (fact: string) => string;
  readonly facts: ReadonlyMap<string, Fact>;
}

/** Facts that the conditions of a rule compare, each once. */
const usedIn = new WeakMap<CompiledRule, ReadonlySet<string>>();

function usedFacts(rule: CompiledRule): ReadonlySet<string> {
  let used = usedIn.get(rule);
  if (used === undefined) {
    const leaves = [rule.when, rule.requires].flatMap(leavesOf);
    used = new Set(
      leaves.flatMap(({ fact, value }) => (value.kind === "fact" ? [fact, value.fact] : [fact])),
    );
    usedIn.set(rule, used);
  }
  return used;
}

function scopeOf(rule: CompiledRule, lookup: Lookup): Scope {
  const limits = new Set(rule.limits.map((limit) => limit.fact));
  const name = (fact: string) => (limits.has(fact) ? `${rule.file.id}/${fact}` : fact);
  const scoped = withLimits(rule, lookup);
  return {
    rule,
    lookup: scoped,
    name,
    facts: new Map([...usedFacts(rule)].map((fact) => [name(fact), scoped(fact)])),
  };
}

const ALWAYS = { surely: true, possibly: true, nominally: true };

function band({ low, nominal, high }: BandFact): TraceBand {
  return { low, nominal, high };
}

function marginOf(leaf: Leaf, left: BandFact, right: BandFact): TraceBand {
  const difference = {
    low: left.low - right.high,
    nominal: left.nominal - right.nominal,
    high: left.high - right.low,
  };
  return leaf.operator.startsWith("greater")
    ? difference
    : { low: -difference.high, nominal: -difference.nominal, high: -difference.low };
}

function explain(
  { leaf, alternative }: PlacedLeaf,
  where: "when" | "requires",
  { lookup }: Scope,
): Comparison {
  const left = lookup(leaf.fact);
  const right = operandOf(leaf, lookup);
  const surely = compare[leaf.operator]("surely", left, right);
  const possibly = compare[leaf.operator]("possibly", left, right);
  const missing = left.kind === "missing" || right.kind === "missing";
  const type = factType(leaf.fact);
  return {
    in: where,
    alternative,
    fact: leaf.fact,
    label: type?.label ?? leaf.fact,
    operator: leaf.operator,
    state: missing ? "missing" : surely ? "sure" : possibly ? "possible" : "no",
    ...(isNumeric(leaf.operator) && type?.kind === "number" ? { unit: type.unit } : {}),
    ...(type?.kind === "number" && type.decimals !== undefined ? { decimals: type.decimals } : {}),
    ...(left.kind === "band" ? { value: band(left) } : left.kind === "word" ? { value: left.word } : {}),
    ...(right.kind === "band"
      ? { against: band(right) }
      : right.kind === "words"
        ? { against: right.words }
        : {}),
    ...(leaf.value.kind === "fact" ? { againstName: leaf.value.fact } : {}),
    ...(left.kind === "band" && right.kind === "band" ? { margin: marginOf(leaf, left, right) } : {}),
  };
}

function questionsOf(scope: Scope): readonly Question[] {
  const { file, when, requires } = scope.rule;
  const ask = (part: string, condition: ConditionNode): Question => ({
    id: `${file.id}/${part}`,
    condition,
    scope: scope.name,
  });
  return [...(when === undefined ? [] : [ask("when", when)]), ask("requires", requires)];
}

function verdictOf(scope: Scope, answers: Answers): Verdict {
  const { file, when, requires } = scope.rule;
  const whenAnswer = when === undefined ? ALWAYS : answers.get(`${file.id}/when`)!;
  const requiresAnswer = answers.get(`${file.id}/requires`)!;
  const decisions = [when, requires].flatMap((node) =>
    node === undefined ? [] : [decide(node, scope.lookup)],
  );
  const missing = namedMissing(decisions.flatMap((decision) => decision.missing));
  const reasons = [...new Set(decisions.flatMap((decision) => decision.reasons))];
  const verdict = wordFor(whenAnswer, requiresAnswer, missing.length + reasons.length > 0);
  return {
    rule: file.id,
    verdict,
    nominally: whenAnswer.nominally && requiresAnswer.nominally,
    missing: verdict === "unknown" ? missing : [],
    reasons: verdict === "unknown" ? reasons : [],
    comparisons: [
      ...placedLeaves(when).map((leaf) => explain(leaf, "when", scope)),
      ...placedLeaves(requires).map((leaf) => explain(leaf, "requires", scope)),
    ],
  };
}

/**
 * Judges every rule on one set of facts. A rule that was judged on the same facts before is not put to the engine
 * again.
 * @param lookup gives any field or quantity by name; missing ones as missing facts
 * @returns one verdict a rule, in the order of the rules
 */
export async function judgeAll(rules: readonly CompiledRule[], lookup: Lookup): Promise<readonly Verdict[]> {
  const scopes = rules.map((rule) => scopeOf(rule, lookup));
  const verdicts = scopes.map(({ rule, facts }) => rememberedVerdict(rule, facts));
  const fresh = scopes.filter((_, index) => verdicts[index] === undefined);
  if (fresh.length === 0) return verdicts as readonly Verdict[];
  const facts = new Map(fresh.flatMap((scope) => [...scope.facts]));
  const answers = await runEngine(fresh.flatMap(questionsOf), facts);
  return scopes.map((scope, index) => {
    const known = verdicts[index];
    if (known !== undefined) return known;
    const verdict = verdictOf(scope, answers);
    rememberVerdict(scope.rule, scope.facts, verdict);
    return verdict;
  });
}
