import { readFileSync } from "node:fs";
import { ruleFiles } from "@trialfit/rules";
import { compileRules, type Derivation, readBuildText, type VerdictWord } from "trialfit";
import { beforeAll, describe, expect, it } from "vitest";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { generateBuild } from "../catalog/generateBuilds.ts";
import { generator } from "../differential/generator.ts";
import type { ProofTally } from "./ProofTally.ts";
import { judgeBands, type ProofTerms, proveSoundness } from "./proveSoundness.ts";
import { randomBuild, refinedBuild } from "./randomBuilds.ts";
import { rulesByCost } from "./rulesByCost.ts";

/** `npm run prove` asks for many more. */
const PAIRS = Number(process.env.TRIALFIT_PAIRS ?? 1_000);
const ENGINES = PAIRS > 10_000 ? 400 : 100;
/** Of rules with a quantity that takes long, one build for so many of the others, and so many times fewer engines. */
const [DEAR_SHARE, FEWER] = PAIRS > 10_000 ? [1, 1] : [10, 4];
/** Milliseconds above which a quantity at one engine takes long. */
const LONG = 0.3;
/** Open verdicts for each that engines within the tolerances really settle differently. */
const MOST_OPEN = 1.15;

const from = ["harrow-eight", "larkspur-hill"].map((name) => {
  const path = new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url);
  return withDefaults(readBuildText(readFileSync(path, "utf8"), name));
});
/** Whole builds drawn with other sizes, words, layouts and cylinders; some of their parts do not go together. */
const drawn = Array.from({ length: PAIRS > 10_000 ? 60 : 8 }, (_, number) =>
  withDefaults(generateBuild(20_261_206, number)),
);
/** Only rules with these ids, to look at some of them again: the builds and the engines stay the same. */
const only = process.env.TRIALFIT_RULES?.split(",");
const every = compileRules(ruleFiles).filter(({ file }) => only === undefined || only.includes(file.id));
const { cheap, dear } = rulesByCost(every, from, LONG);
const builds = Math.ceil(PAIRS / ENGINES);

const cannotBe = ({ impossible }: ProofTally) => [...impossible.values()].reduce((a, b) => a + b, 0);

function told(what: string, tally: ProofTally, started: number): void {
  const { builds: count, pairs, checked, impossible, contradictions, ratio, loose, words } = tally;
  console.log(
    [
      `${what}: ${count} builds, ${pairs} pairs of build and engine in ${((performance.now() - started) / 1000).toFixed(0)} s`,
      `verdicts of builds: ${[...words].map(([word, times]) => `${word} ${times}`).join(", ")}`,
      `verdicts of engines held to certain ones: ${checked.random} random, ${checked.directed} directed; engines that cannot be: ${cannotBe(tally)}`,
      ...[...impossible].map(([rule, times]) => `  ${rule}: cannot be in ${times}`),
      `contradictions: ${contradictions.size}; open for each that differs: ${ratio.toFixed(4)}`,
      ...loose.slice(0, 10).map(([rule, one]) => `  ${rule}: open ${one.open}, differs ${one.differing}`),
    ].join("\n"),
  );
}

describe.each([
  { which: "rules", from, rules: cheap, builds, engines: ENGINES, seed: 20_261_201 },
  {
    which: "rules that take long",
    from,
    rules: dear,
    builds: Math.max(1, Math.round(builds / DEAR_SHARE)),
    engines: ENGINES / FEWER,
    seed: 20_261_202,
  },
  {
    which: "rules, of builds drawn otherwise,",
    from: drawn,
    rules: cheap,
    builds: Math.max(drawn.length, builds / 4),
    engines: ENGINES / 2,
    seed: 20_261_207,
  },
  {
    which: "rules that take long, of builds drawn otherwise,",
    from: drawn,
    rules: dear,
    // Of one drawn build there may be too few rules that can be judged at all.
    builds: drawn.length,
    engines: ENGINES / 2,
    seed: 20_261_208,
  },
])("verdicts of $which over tolerances", ({ which, ...terms }) => {
  let tally: ProofTally;
  beforeAll(async () => {
    const started = performance.now();
    tally = await proveSoundness(terms);
    told(`${terms.rules.length} ${which}`, tally, started);
  }, 36_000_000);

  it("are never contradicted, where certain, by an engine within these tolerances", () => {
    expect([...tally.contradictions]).toEqual([]);
    expect(tally.pairs).toBe(terms.builds * terms.engines);
    expect(tally.checked.random).toBeGreaterThan(tally.pairs * 0.3 * terms.rules.length);
    expect(tally.checked.directed).toBeGreaterThan(terms.builds * terms.rules.length);
    expect(cannotBe(tally)).toBeLessThan(1e-3 * tally.checked.random);
  });

  it("are open hardly ever where engines within them do not differ", () => {
    const open = tally.words.get("open") ?? 0;
    if (tally.builds > 1) expect(open).toBeGreaterThan(0);
    expect(tally.ratio).toBeLessThanOrEqual(MOST_OPEN);
  });
});

/** A band with a tenth of its width cut off at both ends. */
function narrowed(derivation: Derivation): Derivation {
  if (derivation.state !== "value") return derivation;
  const { low, high } = derivation;
  const cut = 0.1 * (high - low);
  return { ...derivation, low: low + cut, high: high - cut };
}

describe("bands that are a fifth too narrow", () => {
  it("are noticed", { timeout: 600_000 }, async () => {
    const terms: ProofTerms = { from, rules: cheap, builds: 4, engines: 50, seed: 20_261_203 };
    expect((await proveSoundness({ ...terms, spoil: narrowed })).contradictions.size).toBeGreaterThan(3);
    expect([...(await proveSoundness(terms)).contradictions]).toEqual([]);
  });
});

describe.each([
  { which: "rules", rules: cheap, builds: Math.max(6, builds / 2), most: 600, seed: 20_261_204 },
  { which: "rules that take long", rules: dear, builds: Math.max(6, builds / 4), most: 20, seed: 20_261_205 },
])("tolerances that shrink, of $which", ({ which, rules, builds: count, most, seed }) => {
  const stays: ReadonlySet<VerdictWord> = new Set(["holds", "fails", "not-applicable"]);
  it("leave what is certain as it is", { timeout: 36_000_000 }, async () => {
    const random = generator(seed);
    const counts = { certain: 0, settled: 0 };
    for (let build = 0; build < count; build += 1) {
      const wide = randomBuild(from[build % from.length]!, random);
      const before = await judgeBands(wide, rules);
      const after = await judgeBands(refinedBuild(wide, random), rules);
      for (const [index, { file }] of rules.entries()) {
        const [old, now] = [before.verdicts[index]!, after.verdicts[index]!];
        if (old === "open" && stays.has(now)) counts.settled += 1;
        if (!stays.has(old)) continue;
        counts.certain += 1;
        // A rule that holds whether or not it applies may turn out not to apply.
        const right = old === "holds" ? ["holds", "not-applicable"] : [old];
        expect(right, `${file.id} in build ${build}`).toContain(now);
      }
    }
    console.log(
      `shrunk tolerances of ${which}: ${counts.certain} certain verdicts stay, ${counts.settled} open ones are settled`,
    );
    expect(counts.certain).toBeGreaterThan(most);
    expect(counts.settled).toBeGreaterThan(most / 30);
  });
});
