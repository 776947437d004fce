import type { CompiledRule } from "./CompiledRule.ts";
import type { Fact } from "./Fact.ts";
import type { Verdict } from "./Verdict.ts";

/** As many verdicts of one rule as are kept: some builds' worth of its places. */
const KEPT = 64;

/** By the facts on which they were reached; the one that was asked for longest ago comes first. */
const kept = new WeakMap<CompiledRule, Map<string, Verdict>>();

/** Unlike JSON it tells unbounded ends and the sign of nothing apart. */
const text = (number: number) => (Object.is(number, -0) ? "-0" : String(number));

function keyOfFact(fact: Fact): string {
  switch (fact.kind) {
    case "band":
      return ["band", ...[fact.low, fact.nominal, fact.high].map(text), ...fact.missing].join("\u0001");
    case "word":
      return `word\u0001${fact.word}`;
    case "missing":
      return ["missing", fact.reason ?? "", ...fact.missing].join("\u0001");
  }
}

function keyOf(facts: ReadonlyMap<string, Fact>): string {
  let key = "";
  for (const fact of facts.values()) key += `${keyOfFact(fact)}\u0000`;
  return key;
}

/**
 * What a rule said of the same facts before.
 * @param facts all that its conditions compare, its limits among them, always in the same order
 */
export function rememberedVerdict(rule: CompiledRule, facts: ReadonlyMap<string, Fact>): Verdict | undefined {
  const verdicts = kept.get(rule);
  const key = verdicts === undefined ? "" : keyOf(facts);
  const verdict = verdicts?.get(key);
  if (verdicts !== undefined && verdict !== undefined) {
    verdicts.delete(key);
    verdicts.set(key, verdict);
  }
  return verdict;
}

/** Remembers what a rule said of some facts. */
export function rememberVerdict(
  rule: CompiledRule,
  facts: ReadonlyMap<string, Fact>,
  verdict: Verdict,
): void {
  let verdicts = kept.get(rule);
  if (verdicts === undefined) {
    verdicts = new Map();
    kept.set(rule, verdicts);
  }
  verdicts.set(keyOf(facts), verdict);
  if (verdicts.size > KEPT) verdicts.delete(verdicts.keys().next().value!);
}
