import { readdirSync, readFileSync } from "node:fs";
import { type RuleFile, ruleFiles } from "@trialfit/rules";
import { type Build, type ListedPart, type PartsList, readBuildText, readPartsListText } from "trialfit";
import { quantities } from "../../../packages/core/src/derive/generated/quantities.ts";
import { influencesOf } from "../../../packages/core/src/derive/influencesOf.ts";
import { compileRules } from "../../../packages/core/src/judge/compileRules.ts";
import { decidingFacts } from "../../../packages/core/src/judge/decidingFacts.ts";
import { parts } from "../../../packages/core/src/read/buildSchema.ts";
import type { FieldValue } from "../../../packages/core/src/read/FieldValue.ts";
import { numberFacts, randomRule, randomSight, wordFacts } from "../randomRules.ts";

type Random = () => number;

/** A search small enough to be done by hand. */
export interface RandomSearch {
  readonly fixed: Build;
  readonly candidates: readonly PartsList[];
  readonly rules: readonly RuleFile[];
}

const demo = new URL("../../../packages/core/demo/", import.meta.url);
const textOf = (name: string) => readFileSync(new URL(name, demo), "utf8");
const larkspur = textOf("larkspur-hill.yaml");
const bore = "bore: 86.500 mm ± 0.008";
const measured =
  'bore: { readings: { "1": 86.495 mm, "2": 86.520 mm, "3": 86.500 mm, "4": 86.470 mm }, instrument: dial bore gauge }';
if (!larkspur.includes(bore)) throw new Error("the demo build states its bore otherwise");

const builds = {
  published: readBuildText(larkspur, "larkspur-hill.yaml"),
  measured: readBuildText(larkspur.replace(bore, measured), "larkspur-hill.yaml"),
};
const lists = readdirSync(new URL("parts", demo)).map((file) =>
  readPartsListText(textOf(`parts/${file}`), file),
);

const pick = <T>(random: Random, from: readonly T[]): T => from[Math.floor(random() * from.length)]!;
const whole = (random: Random, least: number, most: number) =>
  least + Math.floor(random() * (most - least + 1));

function some<T>(random: Random, from: readonly T[], count: number): readonly T[] {
  const left = [...from];
  return Array.from({ length: Math.min(count, left.length) }, () =>
    left.splice(Math.floor(random() * left.length), 1),
  ).flat();
}

/** Prices, times and masses of which many are alike, so that ids must decide. */
const offer = (random: Random) => ({
  price: whole(random, 1, 4) * 1_234_500,
  leadTime: whole(random, 1, 3) * 86_400,
  stock: whole(random, 0, 1),
  totalMass: whole(random, 1, 4) * 0.7,
});

function randomValue(path: string, random: Random): FieldValue | undefined {
  const seen = randomSight(random).get(path);
  if (seen?.kind === "word") return { kind: "choice", value: seen.word, provenance: "data-sheet" };
  if (seen?.kind !== "band") return undefined;
  const [low, nominal, high] = [seen.low / 1000, seen.nominal / 1000, seen.high / 1000];
  return {
    kind: "dimension",
    low,
    nominal,
    high,
    unit: "mm",
    text: "",
    provenance: "data-sheet",
    toleranceFrom: "stated",
  };
}

function listOf(part: string, fields: readonly string[], random: Random): PartsList {
  const ids = some(random, ["a", "b", "c", "d", "e", "f", "g"], whole(random, 2, 4));
  return {
    file: `${part}.csv`,
    part: parts.find(({ spec }) => spec.key === part)!.spec,
    currency: "EUR",
    keep: [],
    parts: ids.map((id, index): ListedPart => {
      const values = fields.flatMap((path) => {
        const value = randomValue(path, random);
        return value === undefined ? [] : [[path, value] as const];
      });
      return { id, values: new Map(values), entries: {}, line: index + 2, ...offer(random) };
    }),
  };
}

/** Made-up fields, and rules whose conditions are nested at random. */
export function madeUpSearch(random: Random): RandomSearch {
  const facts = [...numberFacts, ...Object.keys(wordFacts)];
  const kinds = [...new Set(facts.filter((path) => path.includes(".")).map((path) => path.split(".")[0]!))];
  const chosen = some(random, kinds, whole(random, 2, 4));
  const fixed = new Map<string, FieldValue>();
  for (const path of facts) {
    const value = randomValue(path, random);
    if (value !== undefined) fixed.set(path, value);
  }
  const rules = Array.from({ length: whole(random, 1, 4) }, (_, index) => {
    const rule = randomRule(random, `rule-${index}`);
    // The examples are of another rule: its form alone is asked for here.
    const { examples } = ruleFiles[0]!;
    return { ...rule, examples, otherwise: { ...rule.otherwise, weight: "stop" as const } };
  });
  return {
    fixed: {
      name: "Made at random",
      values: fixed,
      confirmations: new Map(),
      wanted: new Map(),
      aims: new Map(),
      file: undefined,
    },
    candidates: chosen.map((part) =>
      listOf(
        part,
        facts.filter((path) => path.startsWith(`${part}.`)),
        random,
      ),
    ),
    rules,
  };
}

const stops = compileRules(ruleFiles).filter(
  ({ file }) => file.otherwise.weight === "stop" && file.stages.includes("choose"),
);

function isDear(fact: string): boolean {
  const quantity = quantities.get(fact);
  return (
    quantity !== undefined && (quantity.shape === "guarded" || Object.values(quantity.inputs).some(isDear))
  );
}

/** Parts of the invented lists, some with a field left out, and stop rules of the catalog that rest on them. */
export function demoSearch(random: Random, dear: boolean, positions: boolean): RandomSearch {
  const chosen = some(random, lists, whole(random, 2, 3));
  const keys = chosen.map(({ part }) => part.key);
  const touched = stops.filter((rule) => {
    const facts = [...decidingFacts(rule)];
    const roots = facts.flatMap((fact) => [...influencesOf(quantities, fact)]);
    return roots.some((path) => keys.includes(path.split(".")[0]!)) && (dear || !facts.some(isDear));
  });
  const aims = new Map(
    random() < 0.4 ? [["compressionRatio", { text: pick(random, ["at least 8.5", "9 to 12"]) }]] : [],
  );
  return {
    fixed: { ...(positions ? builds.measured : builds.published), aims },
    candidates: chosen.map((list) => ({
      ...list,
      parts: some(random, list.parts, whole(random, 2, 3)).map((part) => {
        const values = new Map(part.values);
        if (random() < 0.15) values.delete(pick(random, [...values.keys()]));
        return { ...part, values, ...offer(random) };
      }),
    })),
    rules: some(random, touched, dear ? 3 : 12).map(({ file }) => file),
  };
}
