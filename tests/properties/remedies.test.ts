import { type Build, evaluate, type FindingRemedies, findRemedies, type Remedy, type Report } from "trialfit";
import { describe, expect, it } from "vitest";
import { type Random, seeded } from "../../packages/core/src/derive/seeded.ts";
import { demoBuilds, generateBuild } from "../catalog/generateBuilds.ts";
import { faultsOfNearest, faultsOfRemedy, smallerThan } from "./proveRemedy.ts";
import { randomBuild } from "./randomBuilds.ts";

/** Builds whose findings are remedied: a share in `npm test`, as many as are asked for by the variable. */
const BUILDS = Number(process.env.TRIALFIT_REMEDIES ?? 6);
const SEED = 20_261_207;
/** Findings of one build, and remedies of one finding, that are tried. */
const FINDINGS = 3;
const REMEDIES = 2;

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

describe("remedies of random builds", () => {
  it("make the finding hold, break nothing, and one step less does not do", {
    timeout: 60_000 * (5 + BUILDS),
  }, async () => {
    const seen = { builds: 0, findings: 0, remedies: 0, scanned: 0, nearest: 0, unachievable: 0 };
    let kept: { build: Build; report: Report; finding: FindingRemedies; remedy: Remedy } | undefined;
    for (let number = 0; number < BUILDS; number += 1) {
      const build = drawBuild(number);
      const random = seeded(SEED, "findings", number);
      const report = await evaluate(build);
      const { findings } = await findRemedies(build, { only: findingsOf(report, random) });
      seen.builds += 1;
      for (const finding of findings) {
        const name = `build ${number}, ${finding.rule}`;
        seen.findings += 1;
        if (finding.state === "unachievable") seen.unachievable += 1;
        for (const remedy of some(finding.remedies, REMEDIES, random)) {
          const by = `${name}, ${remedy.path} ${remedy.text}`;
          expect(await faultsOfRemedy(build, report, finding, remedy), by).toEqual([]);
          expect(await smallerThan(build, finding.rule, remedy), by).toBeUndefined();
          if (remedy.steps > 1) seen.scanned += 1;
          seen.remedies += 1;
          kept ??= remedy.steps > 1 ? { build, report, finding, remedy } : undefined;
        }
        for (const other of some(
          finding.others.filter(({ why }) => why === "breaks"),
          1,
          random,
        )) {
          expect(await faultsOfNearest(build, report, finding.rule, other), `${name}, ${other.path}`).toEqual(
            [],
          );
          seen.nearest += 1;
        }
      }
    }
    console.log(seen);
    expect(seen.remedies).toBeGreaterThanOrEqual(BUILDS);
    expect(seen.nearest).toBeGreaterThan(0);
    expect(seen.unachievable).toBeGreaterThan(0);
    // What is wrong is seen: a change that is a step too small, and one that promises what it does not do.
    const { build, report, finding, remedy } = kept!;
    const smaller = { ...remedy, steps: remedy.steps - 1, to: (remedy.to + remedy.from) / 2 };
    const { text: _, ...untold } = smaller;
    expect(await faultsOfRemedy(build, report, finding, untold)).not.toEqual([]);
    const boasting = {
      ...remedy,
      settles: [report.verdicts.find(({ verdict }) => verdict === "unknown")!.rule],
    };
    expect(await faultsOfRemedy(build, report, finding, boasting)).toHaveLength(1);
  });
});
