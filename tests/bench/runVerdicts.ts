// Times how many builds a second are judged by all rules of the catalog, once their facts are there, and beside it the
// whole way of `evaluate` from the fields of a build to its report: `npm run bench`.
// Every way judges the same builds, and its verdicts are compared before it is timed. Medians of interleaved rounds,
// ratios within one round, processor time.
import { ruleFiles } from "@trialfit/rules";
import { compileRules, decideLimit, type Fact, verdictCodes } from "trialfit";
import { judgeAll } from "../../packages/core/src/judge/judgeAll.ts";
import { drawFacts, drawnFrom } from "../differential/drawnFacts.ts";
import { generator } from "../differential/generator.ts";
import { expressions } from "./libraries/expressions.ts";
import { jsonLogic } from "./libraries/jsonLogic.ts";
import { jsonRulesEngine } from "./libraries/jsonRulesEngine.ts";
import type { PlainFacts, PlainJudge } from "./libraries/PlainJudge.ts";
import { OwnWays } from "./OwnWays.ts";
import { interleaved, type Timed } from "./rounds.ts";
import { wholeWays } from "./wholeWays.ts";

const BUILDS = 512;
const ROUNDS = Number(process.env.TRIALFIT_BENCH_ROUNDS ?? 9);
/** Builds by which slow ways are held to the fast ones. */
const COMPARED = 40;

type Facts = ReadonlyMap<string, Fact>;

const rules = compileRules(ruleFiles);
const from = drawnFrom(rules);
const random = generator(2_027);
const exact = Array.from({ length: BUILDS }, () => drawFacts(from, random, false));
const banded = Array.from({ length: BUILDS }, () => drawFacts(from, random));
const lookupOf = (facts: Facts) => (name: string) => facts.get(name)!;

const own = new OwnWays(rules, BUILDS);

const plainOf = (facts: Facts): PlainFacts =>
  Object.fromEntries(
    [...facts].map(([name, fact]) => [
      name,
      fact.kind === "band" ? fact.nominal : fact.kind === "word" ? fact.word : Number.NaN,
    ]),
  );

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

const boolean = await own.over(exact, false);
const libraries: readonly (readonly [string, PlainJudge])[] = [
  ["json-rules-engine, used plainly", jsonRulesEngine(rules, (facts) => limits.get(facts)!)],
  ["json-logic-engine, interpreted", jsonLogic(rules, false)],
  ["json-logic-engine, compiled", jsonLogic(rules, true)],
  ["filtrex, compiled", expressions(rules)],
];
for (const [name, judge] of libraries)
  for (let build = 0; build < COMPARED; build += 1) {
    const [said, expected] = [await judge(plain[build]!), boolean.bySlots(build)];
    const rule = said.findIndex((code, index) => code !== expected[index]);
    if (rule >= 0)
      throw new Error(`${name}: ${rules[rule]!.file.id} is ${said[rule]}, expected ${expected[rule]}`);
  }
const timedLibraries = libraries.map(
  ([name, judge]): Timed => ({ name, builds: 1, run: (n) => judge(plain[n % BUILDS]!) }),
);

const twoSided = await own.over(banded, true);
const byEngine = (build: number) => judgeAll(rules, lookupOf(banded[build]!));
for (let build = 0; build < COMPARED; build += 1) {
  const expected = twoSided.bySlots(build);
  for (const [rule, { verdict }] of (await byEngine(build)).entries())
    if (verdict !== verdictCodes[expected[rule]!]) throw new Error(`${rules[rule]!.file.id} is ${verdict}`);
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
  ...(await wholeWays(rules)),
];
const measured = await interleaved(all, ROUNDS);
console.log(
  `${rules.length} rules, ${own.facts} facts, ${own.steps} different conditions, ${BUILDS} drawn builds; Node ${process.versions.node}; ${ROUNDS} rounds; facts in place, verdicts compared equal`,
);
console.table(
  Object.fromEntries(
    measured.map(({ name, perSecond, ratio }) => [
      name,
      { "builds/s of one core": Number(perSecond.toPrecision(3)), ratio: Number(ratio.toPrecision(3)) },
    ]),
  ),
);
