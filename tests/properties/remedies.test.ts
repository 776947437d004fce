import { ruleFiles } from "@trialfit/rules";
import { type Build, evaluate, type FindingRemedies, findRemedies, type Remedy, type Report } from "trialfit";
import { describe, expect, it } from "vitest";
import { quantities } from "../../packages/core/src/derive/generated/quantities.ts";
import { type Random, seeded } from "../../packages/core/src/derive/seeded.ts";
import { compileRules } from "../../packages/core/src/judge/compileRules.ts";
import { decidingFacts } from "../../packages/core/src/judge/decidingFacts.ts";
import { demoBuilds, generateBuild } from "../catalog/generateBuilds.ts";
import { faultsOfNoRemedy } from "./proveNoRemedy.ts";
import { faultsOfRemedy, type Ground, smallerThan } from "./proveRemedy.ts";
import { randomBuild } from "./randomBuilds.ts";

/** Builds judged by every rule: a share in `npm test`, as many as are asked for by the variable. */
const BUILDS = Number(process.env.TRIALFIT_REMEDIES ?? 3);
/** For each of them so many more by the rules whose bands take no search, which are most and quickly judged. */
const QUICK = 8;
const SEED = 20_261_207;
/** Findings of one build, and remedies of one finding, that are tried. */
const FINDINGS = 3;
const REMEDIES = 2;

const quick = compileRules(ruleFiles)
  .filter((rule) => ![...decidingFacts(rule)].some((fact) => quantities.get(fact)?.shape === "guarded"))
  .map(({ file }) => file);

/** Half of the builds are demo builds with every field moved a little, half are drawn otherwise. */
function drawBuild(number: number): Build {
  if (number % 2 === 1) return generateBuild(SEED, number);
  const demo = demoBuilds[(number / 2) % demoBuilds.length]!;
  return { ...demo, values: randomBuild(demo.values, seeded(SEED, "moved", number)) };
}

function some<T>(all: readonly T[], most: number, random: Random): readonly T[] {
  return all
    .map((one) => ({ one, at: random() }))
    .sort((a, b) => a.at - b.at)
    .slice(0, most)
    .map(({ one }) => one);
}

const findingsOf = (report: Report, random: Random): readonly string[] =>
  some(
    report.verdicts.filter(
      ({ verdict, comparisons }) =>
        (verdict === "fails" || verdict === "open") && comparisons.some(({ margin }) => margin !== undefined),
    ),
    FINDINGS,
    random,
  ).map(({ rule }) => rule);

type Kept = { readonly ground: Ground; readonly finding: FindingRemedies; readonly remedy: Remedy };

describe.each([
  ["every rule", BUILDS, 0, ruleFiles, 8],
  ["rules that are quickly judged", QUICK * BUILDS, BUILDS, quick, 60],
])("remedies of random builds by %s", (_, builds, first, rules, sizes) => {
  it("are what they say, no smaller change does, and what is said not to do does not", {
    timeout: 60_000 * (5 + BUILDS),
  }, async () => {
    const seen = { builds, findings: 0, remedies: 0, worse: 0, compromises: 0, less: 0, loose: 0, others: 0 };
    let kept: Kept | undefined;
    for (let number = first; number < first + builds; number += 1) {
      const build = drawBuild(number);
      const random = seeded(SEED, "findings", number);
      const before = await evaluate(build, { rules });
      const ground = { build, before, rules, sizes };
      const { findings } = await findRemedies(build, { rules, only: findingsOf(before, random) });
      for (const finding of findings) {
        seen.findings += 1;
        for (const remedy of some([...finding.remedies, ...finding.compromises], REMEDIES, random)) {
          const by = `build ${number}, ${finding.rule}, ${remedy.path} ${remedy.text}`;
          expect(await faultsOfRemedy(ground, finding, remedy), by).toEqual([]);
          expect(await smallerThan(ground, finding, remedy), by).toBeUndefined();
          seen.remedies += 1;
          if (remedy.worsens.length > 0) seen.worse += 1;
          if (remedy.brings.length > 0) seen.compromises += 1;
          if (remedy.oneStepLess.breaks.length > 0) seen.less += 1;
          kept ??= remedy.steps > 1 && remedy.brings.length === 0 ? { ground, finding, remedy } : undefined;
        }
        for (const other of some(finding.others, 1, random)) {
          const by = `build ${number}, ${finding.rule}, ${other.path}`;
          expect(await faultsOfNoRemedy(ground, finding.rule, other), by).toEqual([]);
          seen.others += 1;
          if (other.why === "too-loose") seen.loose += 1;
        }
      }
    }
    console.log(seen);
    expect(seen.remedies).toBeGreaterThanOrEqual(builds);
    expect(seen.worse * seen.others * seen.loose).toBeGreaterThan(0);
    // What is wrong is seen: a change that is a step too small, and what is promised and not done, or done and not told.
    const { ground, finding, remedy } = kept!;
    const { text: _, ...untold } = { ...remedy, steps: remedy.steps - 1 };
    expect(await faultsOfRemedy(ground, finding, untold)).not.toEqual([]);
    const holding = ground.before.verdicts.find(({ verdict }) => verdict === "holds")!.rule;
    const unknown = ground.before.verdicts.find(({ verdict }) => verdict === "unknown")!.rule;
    for (const slip of [
      { settles: [unknown] },
      { brings: [{ rule: holding, weight: "note" as const }] },
      {
        worsens: [
          ...remedy.worsens,
          { rule: holding, weight: "note" as const, verdict: "open" as const, slight: true },
        ],
      },
      { oneStepLess: { ...remedy.oneStepLess, breaks: [...remedy.oneStepLess.breaks, unknown] } },
    ])
      expect(await faultsOfRemedy(ground, finding, { ...remedy, ...slip }), Object.keys(slip)[0]).not.toEqual(
        [],
      );
    const larger = { ...remedy, text: undefined, steps: remedy.steps + 1 };
    expect(
      await smallerThan({ ...ground, sizes: larger.steps }, finding, larger as unknown as Remedy),
    ).toBeDefined();
  });
});
