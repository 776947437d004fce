import { type CompiledRule, quantities } from "trialfit";
import { DrawnFacts } from "../../packages/core/src/judge/drawnFacts.ts";
import { generator } from "../differential/generator.ts";
import { randomEngine, type Values } from "./randomBuilds.ts";

const TRIES = 7;

/** Milliseconds that a quantity takes at one engine: the least of some, since other programs only make it longer. */
function costOf(fact: string, facts: DrawnFacts, engines: readonly ReadonlyMap<string, number>[]): number {
  const times = engines.map((engine) => {
    const started = performance.now();
    facts.at(engine)(fact);
    return performance.now() - started;
  });
  return Math.min(...times);
}

/**
 * Sorts rules by what judging one engine costs: those none of whose quantities takes longer than so many milliseconds
 * in any of the builds, and the others.
 */
export function rulesByCost(rules: readonly CompiledRule[], from: readonly Values[], most: number) {
  const dearFacts = new Set<string>();
  for (const values of from) {
    const random = generator(1);
    const facts = new DrawnFacts(values, values, quantities);
    const engines = Array.from({ length: TRIES }, () => randomEngine(values, random));
    for (const fact of new Set(rules.flatMap((rule) => rule.facts)))
      if (costOf(fact, facts, engines) > most) dearFacts.add(fact);
  }
  const dear = rules.filter((rule) => rule.facts.some((fact) => dearFacts.has(fact)));
  return { cheap: rules.filter((rule) => !dear.includes(rule)), dear };
}
