// Times how many builds a second are judged by all rules of the catalog, once their facts are there: `npm run bench`.
// Every way judges the same builds, and its verdicts are compared before it is timed. Medians of interleaved rounds,
// ratios within one round, processor time.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { ruleFiles } from "@trialfit/rules";
import { compileRules, decideLimit, type Fact, verdictCodes } from "trialfit";
import { compileColumns } from "../../packages/core/src/compile/compileColumns.ts";
import { compileSlots } from "../../packages/core/src/compile/compileSlots.ts";
import { judgeAll } from "../../packages/core/src/judge/judgeAll.ts";
import { drawFacts, drawnFrom } from "../differential/drawnFacts.ts";
import { generator } from "../differential/generator.ts";
import {
  expressions,
  jsonLogic,
  jsonRulesEngine,
  type PlainFacts,
  type PlainJudge,
} from "./otherLibraries.ts";
import { interleaved, type Timed } from "./rounds.ts";
import { straightLine } from "./straightLine.ts";

const BUILDS = 512;
const ROUNDS = Number(process.env.TRIALFIT_BENCH_ROUNDS ?? 9);
/** Builds by which slow ways are held to the fast ones. */
const COMPARED = 40;

type Facts = ReadonlyMap<string, Fact>;
type Straight = (l: Float64Array, h: Float64Array, k: Uint8Array, into: Uint8Array) => void;

const rules = compileRules(ruleFiles);
const from = drawnFrom(rules);
const random = generator(2_027);
const exact = Array.from({ length: BUILDS }, () => drawFacts(from, random, false));
const banded = Array.from({ length: BUILDS }, () => drawFacts(from, random));
const lookupOf = (facts: Facts) => (name: string) => facts.get(name)!;

const slots = compileSlots(rules);
const columns = compileColumns(rules);

/** The facts of each build by slot, and of each block of builds by column. */
function rowsOf(builds: readonly Facts[]) {
  return builds.map((facts) => {
    slots.facts.fill(lookupOf(facts));
    const { low, high, lack } = slots.facts;
    return { low: low.slice(), high: high.slice(), lack: lack.slice() };
  });
}
function blocksOf(builds: readonly Facts[]) {
  return Array.from({ length: BUILDS / columns.room }, (_, block) => {
    for (let build = 0; build < columns.room; build += 1)
      columns.facts.fill(lookupOf(builds[block * columns.room + build]!), build);
    const { low, high, lack } = columns.facts;
    return { low: low.slice(), high: high.slice(), lack: lack.slice() };
  });
}

async function loadStraight(bands: boolean): Promise<Straight> {
  const folder = mkdtempSync(join(tmpdir(), "trialfit-bench-"));
  const file = join(folder, "rules.mjs");
  writeFileSync(file, straightLine(rules, slots.slots, bands));
  const module = (await import(pathToFileURL(file).href)) as { judge: Straight };
  rmSync(folder, { recursive: true });
  return module.judge;
}

const plainOf = (facts: Facts): PlainFacts =>
  Object.fromEntries(
    [...facts].map(([name, fact]) => [
      name,
      fact.kind === "band" ? fact.nominal : fact.kind === "word" ? fact.word : Number.NaN,
    ]),
  );

const codes = new Uint8Array(rules.length);

/** Ways over rows and blocks of one set of builds. */
async function ownWays(builds: readonly Facts[], bands: boolean) {
  const [rows, blocks] = [rowsOf(builds), blocksOf(builds)];
  const straight = await loadStraight(bands);
  const bySlots = (row: (typeof rows)[number]) => {
    slots.facts.low.set(row.low);
    slots.facts.high.set(row.high);
    slots.facts.lack.set(row.lack);
    return slots.judgeAll(codes);
  };
  const byColumns = (block: (typeof blocks)[number]) => {
    columns.facts.low.set(block.low);
    columns.facts.high.set(block.high);
    columns.facts.lack.set(block.lack);
    return columns.judge(columns.room);
  };
  const byStraight = (row: (typeof rows)[number]) => {
    straight(row.low, row.high, row.lack, codes);
    return codes;
  };
  let compared = 0;
  for (const [block, facts] of blocks.entries()) {
    const found = byColumns(facts).slice();
    for (let build = 0; build < columns.room; build += 1) {
      const row = rows[block * columns.room + build]!;
      const [one, other] = [bySlots(row).slice(), byStraight(row)];
      for (const rule of rules.keys()) {
        const column = found[rule * columns.room + build];
        if (column !== one[rule] || one[rule] !== other[rule])
          throw new Error(
            `${rules[rule]!.file.id}, build ${block * columns.room + build}: columns ${column}, closures ${one[rule]}, straight-line ${other[rule]}`,
          );
        compared += 1;
      }
    }
  }
  if (compared !== BUILDS * rules.length) throw new Error(`compared ${compared} verdicts`);
  const timed: Timed[] = [
    { name: "compiled rules: closures over slots", builds: 1, run: (n) => bySlots(rows[n % BUILDS]!) },
    {
      name: "compiled rules: columns, in blocks",
      builds: columns.room,
      run: (n) => byColumns(blocks[n % blocks.length]!),
    },
    { name: "straight-line code, generated", builds: 1, run: (n) => byStraight(rows[n % BUILDS]!) },
  ];
  return { timed, bySlots: (build: number) => bySlots(rows[build]!).slice() };
}

const plain = exact.map(plainOf);
const limits = new Map(
  plain.map((facts, build): [PlainFacts, PlainFacts] => [
    facts,
    Object.fromEntries(
      rules.flatMap((rule) =>
        rule.limits
          .filter(({ cases }) => cases.length > 0)
          .map((limit) => [
            `${rule.file.id}/${limit.fact}`,
            decideLimit(limit, lookupOf(exact[build]!)).nominal,
          ]),
      ),
    ),
  ]),
);

const boolean = await ownWays(exact, false);
const libraries: readonly (readonly [string, PlainJudge])[] = [
  ["json-rules-engine, used plainly", jsonRulesEngine(rules, (facts) => limits.get(facts)!)],
  ["json-logic-engine, interpreted", jsonLogic(rules, false)],
  ["json-logic-engine, compiled", jsonLogic(rules, true)],
  ["filtrex, compiled", expressions(rules)],
];
for (const [name, judge] of libraries)
  for (let build = 0; build < COMPARED; build += 1) {
    const [said, own] = [await judge(plain[build]!), boolean.bySlots(build)];
    const rule = said.findIndex((code, index) => code !== own[index]);
    if (rule >= 0)
      throw new Error(`${name}: ${rules[rule]!.file.id} is ${said[rule]}, expected ${own[rule]}`);
  }
const timedLibraries = libraries.map(
  ([name, judge]): Timed => ({ name, builds: 1, run: (n) => judge(plain[n % BUILDS]!) }),
);

const twoSided = await ownWays(banded, true);
const byEngine = (build: number) => judgeAll(rules, lookupOf(banded[build]!));
for (let build = 0; build < COMPARED; build += 1) {
  const own = twoSided.bySlots(build);
  for (const [rule, { verdict }] of (await byEngine(build)).entries())
    if (verdict !== verdictCodes[own[rule]!]) throw new Error(`${rules[rule]!.file.id} is ${verdict}`);
}

const sided = (timed: readonly Timed[], what: string) =>
  timed.map((one) => ({ ...one, name: `${one.name}: ${what}` }));
const all = [
  ...sided(timedLibraries, "true or false"),
  {
    name: "json-rules-engine from both sides, with reasons (judgeAll): two-sided",
    builds: 1,
    run: (n: number) => byEngine(n % BUILDS),
  },
  ...sided(boolean.timed, "true or false"),
  ...sided(twoSided.timed, "two-sided, missing facts"),
];
const measured = await interleaved(all, ROUNDS);
console.log(
  `${rules.length} rules, ${slots.slots.size} facts, ${columns.steps} different conditions, ${BUILDS} drawn builds; Node ${process.versions.node}; ${ROUNDS} rounds; facts in place, verdicts compared equal`,
);
console.table(
  Object.fromEntries(
    measured.map(({ name, perSecond, ratio }) => [
      name,
      { "builds/s of one core": Math.round(perSecond), ratio: Number(ratio.toPrecision(3)) },
    ]),
  ),
);
