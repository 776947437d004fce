import { ruleFiles } from "@trialfit/rules";
import {
  type Build,
  type CompiledRule,
  compileRules,
  type FieldValue,
  fields,
  quantities,
  readBuild,
} from "trialfit";
import { beforeAll, describe, expect, it } from "vitest";
import { RootFinder } from "../../packages/core/src/derive/rootsOf.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { judgeAll } from "../../packages/core/src/judge/judgeAll.ts";
import { judgeExample } from "../../packages/core/src/judge/judgeExample.ts";
import type { Verdict } from "../../packages/core/src/judge/Verdict.ts";
import { exactFacts } from "../catalog/exactFacts.ts";
import { rangeOf } from "../catalog/fieldText.ts";
import { demoBuilds, generateBuild } from "../catalog/generateBuilds.ts";
import { generator } from "../differential/generator.ts";

const SEED = 20_261_130;
const BUILDS = 60;
/** Verdicts looked at closer in each build. */
const LOOKED_AT = 30;
/** Builds, each of which also gives others what they lack: fields that a build does not give are taken, and other values of those that it does. */
const DONORS = 60;

/** Draws of the other named fields, to see that one matters; more where a rule has not yet shown that it does. */
const [DRAWS, MORE_DRAWS] = [12, 300];
/** Builds of one verdict between which and those of another it is seen where the verdict turns, and how closely. */
const [PAIRED, PAIRS] = [60, 80];
const HALVINGS = 25;

type Paths = ReadonlySet<string>;

const fieldOf = (path: string) => path.replace(/\.place$/, "");
const without = (build: Build, paths: Paths): Build => ({
  ...build,
  values: new Map([...build.values].filter(([path]) => !paths.has(fieldOf(path)))),
});

/** A build with the fields named taken from another, as far as that has them. */
const withFrom = (build: Build, donor: Build, paths: Paths): Build => ({
  ...without(build, paths),
  values: new Map([
    ...without(build, paths).values,
    ...[...donor.values].filter(([path]) => paths.has(fieldOf(path))),
  ]),
});

const donors = Array.from({ length: DONORS }, (_, number) => generateBuild(SEED + 1, number));

/** What no demo build gives as a table, so that none that is drawn from them does: invented. */
const tables = readBuild({
  trialfit: "1",
  name: "Tables (invented)",
  crankshaft: {
    torsionStations: [
      { inertia: "0.02 kg m2", stiffness: "500000 N m/rad" },
      { inertia: "0.012 kg m2", stiffness: "480000 N m/rad" },
      { inertia: "0.15 kg m2" },
    ],
  },
  camshaft: { inletLiftTable: liftTable(470), exhaustLiftTable: liftTable(250) },
});

/** Lift of 10 mm over 260° about a crank angle after firing top dead centre. */
function liftTable(centre: number) {
  return Array.from({ length: 27 }, (_, index) => {
    const from = (index - 13) / 13;
    return { angle: `${centre + 130 * from} deg`, lift: `${(10 * (1 - from ** 2) ** 2).toFixed(4)} mm` };
  });
}

/** A drawn build in which every field is given: what it leaves out is taken from other drawn ones. */
function wholeBuild(number: number): Build {
  const order = donors.map((_, index) => donors[(index + number) % DONORS]!);
  return [...order, ...demoBuilds, tables].reduce(
    (build, donor) => {
      const lacking = new Set(
        [...donor.values.keys()].map(fieldOf).filter((path) => !build.values.has(path)),
      );
      return lacking.size === 0 ? build : withFrom(build, donor, lacking);
    },
    generateBuild(SEED, number),
  );
}

/**
 * Whether a field's default follows a word: then it is missing with the word. That a rule applies to none of the words
 * that leave the field without one is not seen when they are named.
 */
const followsWord = (path: string) => "byChoice" in (fields.get(path)?.spec.assumed ?? {});

/**
 * Named beside a word from which, once it is given, the inputs of another way follow: without throws the bank angle
 * says where a cap lies, and for opposed cylinders it follows from the layout. Until the layout is given, nobody knows.
 */
const otherWay: ReadonlySet<string> = new Set(["main-caps-clamped: crankshaft.throws"]);

const wholes = donors.map((_, number) => wholeBuild(number));

/** Without tolerances a verdict is certain as soon as nothing is missing, and nothing is searched. */
const judge = (rules: readonly CompiledRule[], build: Build): Promise<readonly Verdict[]> =>
  judgeAll(rules, exactFacts(build));

/** Fields that the facts of a rule rest on, by the ways that these values allow. */
function rootsOf(rule: CompiledRule, finder: RootFinder): Paths {
  return new Set(rule.facts.flatMap((fact) => [...finder.rootsOf(fact)].map(fieldOf)));
}

const rules = compileRules(ruleFiles.filter(({ confirm }) => confirm === undefined));
const byId = new Map(rules.map((rule) => [rule.file.id, rule]));

/** Share of the numbers that are drawn from anywhere in their range. */
const ANYWHERE = 0.4;

/** Words of the fields named drawn evenly, and some numbers from anywhere: donors seldom have the rare ones. */
function withRare(build: Build, named: Paths, random: () => number): Build {
  const values = new Map(build.values);
  for (const path of named) {
    const spec = fields.get(path)?.spec;
    const value = values.get(path);
    if (spec?.kind === "choice") {
      const words = Object.keys(spec.options);
      const word = words[Math.floor(random() * words.length)]!;
      values.set(path, { kind: "choice", value: word, provenance: "data-sheet" });
    }
    if (spec?.kind !== "dimension" || value?.kind !== "dimension" || random() >= ANYWHERE) continue;
    const [least, most] = rangeOf(spec);
    values.set(path, { ...value, nominal: least + (most - least) * random() });
  }
  return { ...build, values };
}

/** A value part of the way from one to another; words and tables are the first's. */
function between(from: FieldValue, to: FieldValue | undefined, share: number): FieldValue {
  if (from.kind !== "dimension" || to?.kind !== "dimension" || from.unit === "1") return from;
  return { ...from, nominal: from.nominal + share * (to.nominal - from.nominal) };
}

/** A build part of the way from one to another in the fields named. */
const mixed = (from: Build, to: Build, named: Paths, share: number): Build => ({
  ...from,
  values: new Map(
    [...from.values].map(([path, value]) =>
      named.has(fieldOf(path)) ? [path, between(value, to.values.get(path), share)] : [path, value],
    ),
  ),
});

/**
 * Whether leaving out one of the named fields leaves the rule unknown, for some values of the other named ones; what
 * the build gives stays. Where it decides what lies between two limits only, drawn values miss it: then the place
 * where the verdict turns is sought between two builds with different ones.
 */
async function matters(
  path: string,
  rule: CompiledRule,
  bare: Build,
  whole: Build,
  named: Paths,
  closely: boolean,
): Promise<boolean> {
  const others = new Set([...named].filter((one) => one !== path));
  const decided = new Map<string, Build[]>();
  const look = async (build: Build): Promise<string | undefined> => {
    const [verdict] = await judge([rule], build);
    if (verdict!.verdict === "unknown" && verdict!.missing.includes(path)) return undefined;
    return verdict!.verdict;
  };
  const random = generator(others.size);
  for (let draw = 0; draw < (closely ? MORE_DRAWS : DRAWS); draw += 1) {
    // The build that is whole, then others, then a field from here and one from there, with any words.
    const from = () => wholes[draw < DONORS ? draw : Math.floor(random() * DONORS)]!;
    const filled = [...others].reduce(
      (so, one) => withFrom(so, draw === 0 ? whole : from(), new Set([one])),
      bare,
    );
    const build = draw < DONORS ? filled : withRare(filled, others, random);
    const word = await look(build);
    if (word === undefined) return true;
    const alike = decided.get(word) ?? [];
    if (alike.length < PAIRED) decided.set(word, [...alike, build]);
  }
  if (!closely) return false;
  const words = [...decided.keys()];
  for (const [one, other] of words.flatMap((a) => words.filter((b) => b !== a).map((b) => [a, b] as const)))
    for (let pair = 0; pair < PAIRS; pair += 1) {
      const [from, to] = [one, other].map((word) => {
        const alike = decided.get(word)!;
        return alike[Math.floor(random() * alike.length)]!;
      });
      if ((await look(mixed(from!, to!, others, 1))) !== other) continue;
      let [low, high] = [0, 1];
      for (let halving = 0; halving < HALVINGS; halving += 1) {
        const share = (low + high) / 2;
        const word = await look(mixed(from!, to!, others, share));
        if (word === undefined) return true;
        if (word === one) low = share;
        else high = share;
      }
    }
  return false;
}

/**
 * Whether one of the rule's own examples is unknown for want of the field alone: where only a narrow range of other
 * values tells, drawn builds may miss it, and an example holds it.
 */
async function isNeededByExample(pair: string): Promise<boolean> {
  const [id, path] = pair.split(": ") as [string, string];
  const rule = byId.get(id)!;
  for (const { given } of rule.file.examples) {
    const { [path]: _, ...others } = given;
    if (given[path] === undefined) continue;
    const { verdict, missing } = await judgeExample(rule, { given: others });
    if (verdict === "unknown" && missing.length === 1 && missing[0] === path) return true;
  }
  return false;
}

/** Whether a rule is unknown for want of the field alone in some whole build: in the one looked at it may have been idle. */
async function isNeededInAnother(pair: string): Promise<boolean> {
  const [id, path] = pair.split(": ") as [string, string];
  for (const whole of wholes) {
    const [verdict] = await judge([byId.get(id)!], without(whole, new Set([path])));
    if (verdict!.verdict === "unknown" && verdict!.missing.length === 1 && verdict!.missing[0] === path)
      return true;
  }
  return false;
}

describe("fields left out of drawn builds", () => {
  const counts = { unknown: 0, named: 0, settled: 0, contradictory: 0, alone: 0, matter: 0 };
  const seen = new Set<string>();
  const unsettled: string[] = [];
  const foreign: string[] = [];
  /** Rules with a field that they name: where it was seen to matter, and where it was not in some build. */
  const shown = new Set<string>();
  const idle = new Set<string>();

  async function lookAt(verdict: Verdict, bare: Build, whole: Build, finder: RootFinder): Promise<void> {
    const rule = byId.get(verdict.rule)!;
    const named: Paths = new Set(verdict.missing);
    const roots = rootsOf(rule, finder);
    counts.unknown += 1;
    counts.named += named.size;
    if (named.size === 0) foreign.push(`${verdict.rule} names nothing`);
    for (const one of named) {
      if (bare.values.has(one)) foreign.push(`${verdict.rule} names ${one}, which is there`);
      if (!roots.has(one)) foreign.push(`${verdict.rule} names ${one}, which it does not rest on`);
    }
    const [again] = await judge([rule], withFrom(bare, whole, named));
    // Values that do not go together, as a V without its bank angle, are said so and are not missing.
    if (again!.reasons.length > 0) counts.contradictory += 1;
    else if (again!.verdict === "unknown")
      unsettled.push(`${verdict.rule} with ${[...named].join()} lacks ${again!.missing.join()}`);
    else {
      counts.settled += 1;
      seen.add(verdict.rule);
    }
    for (const path of named) {
      const pair = `${verdict.rule}: ${path}`;
      const closely = !shown.has(pair) && !followsWord(path);
      if (named.size === 1) counts.alone += 1;
      const found =
        named.size === 1
          ? again!.verdict !== "unknown"
          : await matters(path, rule, bare, whole, named, closely);
      if (found) shown.add(pair);
      else idle.add(pair);
      counts.matter += found ? 1 : 0;
    }
  }

  beforeAll(async () => {
    const random = generator(SEED);
    for (let number = 0; number < BUILDS; number += 1) {
      const whole = wholes[number]!;
      const share = random() ** 2;
      const gone = new Set([...whole.values.keys()].map(fieldOf).filter(() => random() < share));
      const bare = without(whole, gone);
      const given = withDefaults(bare);
      const finder = new RootFinder(
        quantities,
        (path) => given.has(path),
        () => false,
      );
      const verdicts = await judge(rules, bare);
      const looked = verdicts.filter((one) => one.verdict === "unknown" && one.reasons.length === 0);
      for (const verdict of looked.sort(() => random() - 0.5).slice(0, LOOKED_AT))
        await lookAt(verdict, bare, whole, finder);
    }
    for (const pair of idle)
      if (!shown.has(pair) && ((await isNeededInAnother(pair)) || (await isNeededByExample(pair))))
        shown.add(pair);
    console.log(
      `unknown verdicts of ${BUILDS} drawn builds: ${JSON.stringify(counts)}; ${seen.size} rules, ${shown.size} pairs of rule and field seen to matter`,
    );
  }, 900_000);

  it("are all given by the whole builds, so that every one can be put back", () => {
    const whole = wholes[0]!;
    const never = [...fields].flatMap(([path, { spec }]) =>
      spec.kind === "text" || whole.values.has(path) ? [] : [path],
    );
    expect(never).toEqual([]);
    expect(fields.size).toBeGreaterThan(500);
  });
  it("are named where a verdict is unknown, and are those that it rests on", () => {
    expect(foreign).toEqual([]);
    expect(counts.unknown).toBeGreaterThan(1_500);
    expect(counts.named).toBeGreaterThan(counts.unknown);
  });
  it("settle the verdict once those named, and no others, are given", () => {
    expect(unsettled).toEqual([]);
    expect(counts.settled).toBeGreaterThan(0.7 * counts.unknown);
    expect(seen.size).toBeGreaterThan(0.8 * rules.length);
  });
  it("are each needed: with all others that are named given, it can stay unknown", () => {
    const never = [...idle].filter((pair) => !shown.has(pair) && !otherWay.has(pair));
    expect(never.filter((pair) => !followsWord(pair.replace(/^.*: /, "")))).toEqual([]);
    expect(never.length).toBeLessThan(0.01 * shown.size);
    expect(shown.size).toBeGreaterThan(700);
    expect(counts.matter).toBeGreaterThan(0.9 * counts.named);
  });
});
