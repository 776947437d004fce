import type { Condition, Operator, RuleFile } from "@trialfit/rules";

/** Fields that random rules ask for: real ones, so that the rules compile as any other. */
export const numberFacts = [
  "block.bore",
  "crankshaft.stroke",
  "piston.compressionHeight",
  "headGasket.compressedThickness",
];
export const wordFacts: Readonly<Record<string, readonly string[]>> = {
  use: ["street", "circuit", "drag", "endurance"],
  "block.material": ["grey-iron", "cast-aluminium"],
  "piston.supportRail": ["yes", "no"],
};

/** What a random rule sees: a band in whole millimetres, a word, or nothing. */
export type Seen =
  | { readonly kind: "band"; readonly low: number; readonly nominal: number; readonly high: number }
  | { readonly kind: "word"; readonly word: string }
  | { readonly kind: "nothing" };

type Random = () => number;
const pick = <T>(random: Random, from: readonly T[]): T => from[Math.floor(random() * from.length)]!;
const whole = (random: Random, least: number, most: number) =>
  least + Math.floor(random() * (most - least + 1));

const NUMERIC: readonly Operator[] = ["lessThan", "lessThanInclusive", "greaterThan", "greaterThanInclusive"];

function comparison(random: Random, limits: readonly string[]): Condition {
  if (random() < 0.35) {
    const fact = pick(random, Object.keys(wordFacts));
    const words = wordFacts[fact]!;
    if (random() < 0.5)
      return { fact, operator: random() < 0.5 ? "equal" : "notEqual", value: pick(random, words) };
    const some = words.filter(() => random() < 0.5);
    return { fact, operator: random() < 0.5 ? "in" : "notIn", value: some.length === 0 ? [words[0]!] : some };
  }
  const fact = pick(random, numberFacts);
  const operator = pick(random, NUMERIC);
  const kind = random();
  if (kind < 0.3 && limits.length > 0)
    return { fact, operator, value: { fact: `limit.${pick(random, limits)}` } };
  if (kind < 0.5) return { fact, operator, value: { fact: pick(random, numberFacts) } };
  return { fact, operator, value: `${whole(random, 1, 8)} mm` };
}

function tree(random: Random, depth: number, limits: readonly string[]): Condition {
  const kind = random();
  if (depth === 0 || kind < 0.35) return comparison(random, limits);
  if (kind < 0.5) return { not: tree(random, depth - 1, limits) };
  const children = Array.from({ length: whole(random, 1, depth > 2 ? 3 : 2) }, () =>
    tree(random, depth - 1, limits),
  );
  return kind < 0.75 ? { all: children } : { any: children };
}

const uses = (condition: Condition, limit: string): boolean =>
  JSON.stringify(condition).includes(`"limit.${limit}"`);

/** A random rule: nested conditions, limits with cases, sometimes a condition of relevance. */
export function randomRule(random: Random, id: string): RuleFile {
  const when = random() < 0.4 ? tree(random, 2, []) : undefined;
  const requires = tree(random, 3, ["least", "most"]);
  const limits = ["least", "most"].filter((name) => uses(requires, name));
  const limit = () => ({
    value: `${whole(random, 1, 8)} mm`,
    range: ["0 mm", "9 mm"] as [string, string],
    standing: "from-memory" as const,
    movedBy: [],
    ...(random() < 0.6
      ? {
          cases: Array.from({ length: whole(random, 1, 2) }, () => ({
            when: tree(random, 1, []),
            value: `${whole(random, 1, 8)} mm`,
          })),
        }
      : {}),
  });
  return {
    id,
    title: "A rule made at random",
    system: "pistons",
    parts: ["block"],
    stages: ["choose"],
    ...(when === undefined ? {} : { when }),
    requires,
    ...(limits.length === 0 ? {} : { limits: Object.fromEntries(limits.map((name) => [name, limit()])) }),
    otherwise: { work: "order", weight: "note", do: "Nothing at all." },
    because: "Only for tests of the evaluator.",
    sources: [{ id: "definition" }],
    examples: [],
  } as RuleFile;
}

/** What a random build shows of every fact. */
export function randomSight(random: Random): ReadonlyMap<string, Seen> {
  const numbers = numberFacts.map((fact): [string, Seen] => {
    if (random() < 0.25) return [fact, { kind: "nothing" }];
    const nominal = whole(random, 1, 8);
    const exact = random() < 0.3;
    const low = exact ? nominal : nominal - whole(random, 0, 2);
    return [fact, { kind: "band", low, nominal, high: exact ? nominal : nominal + whole(random, 0, 2) }];
  });
  const words = Object.entries(wordFacts).map(([fact, options]): [string, Seen] => [
    fact,
    random() < 0.25 ? { kind: "nothing" } : { kind: "word", word: pick(random, options) },
  ]);
  return new Map([...numbers, ...words]);
}
