import { ruleFiles } from "@trialfit/rules";
import { compileRules, evaluate, quantities, verdictCodes } from "trialfit";
import { describe, expect, it } from "vitest";
import { GradualJudge } from "../../packages/core/src/compile/GradualJudge.ts";
import type { PartialJudgeInput } from "../../packages/core/src/compile/PartialJudge.ts";
import { deriveAll } from "../../packages/core/src/derive/deriveAll.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { decidingFacts } from "../../packages/core/src/judge/decidingFacts.ts";
import { judgeBuild } from "../../packages/core/src/judge/judgeBuild.ts";
import { generator } from "./generator.ts";
import { buildWith, cheapRules, demoPair as demos, partLists } from "./partLists.ts";

const rules = compileRules(ruleFiles);
const cheap = cheapRules(rules);

/** Whole evaluations take seconds: `npm run prove` makes more of them. */
const WHOLE = process.env.TRIALFIT_FAST_PAIRS !== undefined;

/** Every combination of options. */
function* combinations(counts: readonly number[]): Generator<readonly number[]> {
  const [first, ...others] = counts;
  if (first === undefined) yield [];
  else
    for (let option = 0; option < first; option += 1)
      for (const rest of combinations(others)) yield [option, ...rest];
}

const choose = (judge: GradualJudge, options: readonly number[]) => {
  for (const [level, option] of options.entries()) judge.choose(level, option);
};

/** Verdicts by the ordinary way. */
async function plainWords(input: PartialJudgeInput, options: readonly number[]): Promise<readonly string[]> {
  const { judged } = await judgeBuild(withDefaults(buildWith(input, options)), input.rules, quantities, []);
  const words = new Map(judged.map(({ rule, verdict }) => [rule, verdict.verdict]));
  return input.rules.map((rule) => words.get(rule) ?? "not-applicable");
}

/** Verdicts that were certain before the last part was chosen, over all lists. */
let cutEarly = 0;

const LISTS = [
  { parts: ["crankshaft", "connectingRod", "piston"], places: 0 },
  { parts: ["headGasket", "cylinderHead", "camshaft"], places: 0 },
  { parts: ["targets", "block", "piston"], places: 0 },
  { parts: ["block", "oil", "rodBearing"], places: 0 },
  { parts: ["block", "piston", "ringSet"], places: 4 },
  { parts: ["crankshaft", "rodBearing", "block"], places: 5 },
] as const;

describe("combinations of parts are judged gradually as they are judged whole", () => {
  it.each(LISTS)("$parts, readings up to place $places", async ({ parts, places }) => {
    const random = generator(parts.join().length + places);
    const [one, other] = demos;
    const pair = random() < 0.5 ? ([one, other] as const) : ([other, one] as const);
    const input = partLists(pair, cheap, parts, places === 0 ? 3 : 2, random, places);
    const judge = new GradualJudge(input);
    const failed = new Map<string, ReadonlySet<number>>();
    const words: Record<string, number> = {};
    const each = places === 0 ? 3 : 2;
    let compared = 0;
    expect(judge.chosen).toBe(0);
    const atOnce = new Set(judge.failuresAt(-1));
    for (const options of combinations(parts.map(() => each))) {
      for (const [level, option] of options.entries()) {
        judge.choose(level, option);
        const failures = judge.failuresAt(level);
        expect(judge.failureAt(level)).toBe(failures[0] ?? -1);
        const key = options.slice(0, level + 1).join();
        const before = failed.get(options.slice(0, level).join()) ?? atOnce;
        failed.set(key, new Set([...before, ...failures]));
      }
      const plain = await plainWords(input, options);
      expect(Array.from(judge.verdicts(), (code) => verdictCodes[code])).toEqual(plain);
      for (const [rule, word] of plain.entries()) {
        const said = judge.word(rule);
        if (said !== word)
          expect.fail(`${cheap[rule]!.file.id} at ${options}: found ${said}, expected ${word}`);
        const cutBefore = failed.get(options.slice(0, -1).join())!.has(rule);
        if (cutBefore) {
          expect(word, cheap[rule]!.file.id).toBe("fails");
          cutEarly += 1;
        }
        expect(failed.get(options.join())!.has(rule), cheap[rule]!.file.id).toBe(word === "fails");
        words[word] = (words[word] ?? 0) + 1;
        compared += 1;
      }
    }
    expect(compared).toBe(each ** 3 * cheap.length);
    expect(words.fails).toBeGreaterThan(0);
    expect(words.unknown).toBeGreaterThan(0);
    expect(words.holds).toBeGreaterThan(compared / 10);
    // Each quantity was worked out once for what can change it: far fewer times than there were builds.
    const asked = new Set(cheap.flatMap((rule) => [...decidingFacts(rule)])).size;
    expect(judge.counts.derived).toBeGreaterThan(0);
    expect(judge.counts.derived).toBeLessThan((each ** 3 * asked) / 2);
  });

  it("with verdicts that are certain before the last part is chosen", () => {
    expect(cutEarly).toBeGreaterThan(100);
  });

  it("whatever order the parts are tried in", () => {
    const input = partLists(demos, cheap, ["crankshaft", "connectingRod", "piston"], 4, generator(5));
    const [orderly, jumping] = [new GradualJudge(input), new GradualJudge(input)];
    const said = new Map<string, string>();
    for (const options of combinations([4, 4, 4])) {
      choose(orderly, options);
      said.set(
        options.join(),
        cheap.map((_, rule) => `${orderly.word(rule)} ${orderly.margin(rule)}`).join(),
      );
    }
    const random = generator(6);
    for (let tried = 0; tried < 60; tried += 1) {
      const options = [0, 1, 2].map(() => Math.floor(4 * random()));
      choose(jumping, options);
      const some = cheap.map((_, rule) => `${jumping.word(rule)} ${jumping.margin(rule)}`).join();
      expect(some).toBe(said.get(options.join()));
    }
  });

  it("bands are those of deriveAll, verdicts and margins those of evaluate, over the demo builds with parts exchanged", async () => {
    let [bands, verdicts, margins, builds] = [0, 0, 0, 0];
    const pairs = [demos, [demos[1], demos[0]] as const].slice(0, WHOLE ? 2 : 1);
    for (const [index, pair] of pairs.entries()) {
      const input = partLists(pair, rules, ["piston", "headGasket", "oil"], 2, generator(40 + index));
      const judge = new GradualJudge(input);
      for (const options of [
        [0, 0, 0],
        [1, 0, 1],
      ]) {
        choose(judge, options);
        const build = buildWith(input, options);
        builds += 1;
        const report = await evaluate(build);
        const derived = deriveAll(
          withDefaults(build),
          quantities,
          new Set(rules.flatMap((rule) => [...decidingFacts(rule)]).filter((fact) => quantities.has(fact))),
        );
        for (const [id, derivation] of derived) {
          expect(judge.derivation(id)).toEqual(derivation);
          bands += 1;
        }
        for (const [rule, { file }] of rules.entries()) {
          const said = report.verdicts.find((one) => one.rule === file.id)!;
          expect(judge.word(rule), file.id).toBe(said.verdict);
          verdicts += 1;
          const margin = judge.margin(rule);
          // With every comparison needed, the sign of the least margin is the verdict.
          if (said.verdict === "holds") expect(margin, file.id).toBeGreaterThanOrEqual(0);
          if (said.verdict === "fails" && !said.comparisons.some((one) => one.alternative))
            expect(margin, file.id).toBeLessThanOrEqual(0);
          if (said.verdict === "unknown") expect(margin, file.id).toBeNaN();
          if (said.verdict === "not-applicable") expect(margin, file.id).toBe(Number.POSITIVE_INFINITY);
          margins += 1;
        }
      }
    }
    expect([verdicts, margins]).toEqual([builds * rules.length, builds * rules.length]);
    expect(bands).toBeGreaterThan(builds * 150);
    expect(builds).toBeGreaterThanOrEqual(2);
  });
});
