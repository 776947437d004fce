import { type CompiledRule, type Fact, factType, leavesOf } from "trialfit";
import { decidingFacts } from "../../packages/core/src/judge/decidingFacts.ts";

type Random = () => number;

/** How a fact can be drawn: around the numbers that rules compare it with, or one of its words. */
export type DrawnFrom =
  | { readonly name: string; readonly numbers: readonly number[] }
  | { readonly name: string; readonly words: readonly string[] };

/** Share of facts that are missing. */
const MISSING = 0.12;
/** Share of bands without a width, and of nominal values right on a number that is compared. */
const EXACT = 0.3;
const ON_IT = 0.2;

/** What every fact that decides some rules can be drawn from: near to where verdicts turn. */
export function drawnFrom(rules: readonly CompiledRule[]): readonly DrawnFrom[] {
  const numbers = new Map<string, Set<number>>();
  for (const rule of rules) {
    const cases = rule.limits.flatMap((limit) => limit.cases.map((one) => one.when));
    for (const { fact, value } of [rule.when, rule.requires, ...cases].flatMap(leavesOf)) {
      const limit = value.kind === "fact" ? rule.limits.find((one) => one.fact === value.fact) : undefined;
      const compared =
        limit === undefined
          ? value.kind === "number"
            ? [value.value]
            : []
          : [limit.value, ...limit.cases.map((one) => one.value)];
      const known = numbers.get(fact) ?? new Set();
      for (const number of compared) known.add(number);
      numbers.set(fact, known);
    }
  }
  return [...new Set(rules.flatMap((rule) => [...decidingFacts(rule)]))].sort().map((name) => {
    const type = factType(name);
    if (type?.kind === "word") return { name, words: type.options };
    const known = [...(numbers.get(name) ?? [])];
    return { name, numbers: known.length === 0 ? [1] : known };
  });
}

const pick = <T>(random: Random, from: readonly T[]): T => from[Math.floor(random() * from.length)]!;

function drawNumber(random: Random, numbers: readonly number[], missing: number, wide: boolean): Fact {
  if (random() < missing) return { kind: "missing", missing: ["a field"] };
  const near = pick(random, numbers);
  const reach = near === 0 ? 1 : Math.abs(near);
  const nominal = random() < ON_IT ? near : near + reach * (2 * random() - 1);
  const exact = !wide || random() < EXACT;
  const width = () => (exact ? 0 : reach * 0.4 * random());
  return { kind: "band", low: nominal - width(), nominal, high: nominal + width(), missing: [] };
}

/**
 * The facts of one drawn build.
 * @param bands false: single values, nothing missing
 */
export function drawFacts(
  from: readonly DrawnFrom[],
  random: Random,
  bands = true,
): ReadonlyMap<string, Fact> {
  const missing = bands ? MISSING : 0;
  return new Map(
    from.map((one): [string, Fact] => {
      if ("numbers" in one) return [one.name, drawNumber(random, one.numbers, missing, bands)];
      if (random() < missing) return [one.name, { kind: "missing", missing: [one.name] }];
      return [one.name, { kind: "word", word: pick(random, one.words) }];
    }),
  );
}
