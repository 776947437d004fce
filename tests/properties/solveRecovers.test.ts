import { type Solution, solve, withField } from "trialfit";
import { describe, expect, it } from "vitest";
import { seeded } from "../../packages/core/src/derive/seeded.ts";
import { demoBuilds, generateBuild } from "../catalog/generateBuilds.ts";
import { drawPuzzle, type Puzzle } from "./drawPuzzle.ts";
import { randomBuild } from "./randomBuilds.ts";

/** Builds whose sizes are taken out and found back. */
const BUILDS = Number(process.env.TRIALFIT_SOLVES ?? 1000);
const SEED = 20_261_210;
/** Share of the builds in which other sizes on whole steps may meet the aims as well. */
const MOST_OTHERS = 0.01;

/** Half of the builds are demo builds with every field moved a little, half are drawn otherwise. */
function puzzleOf(number: number): Puzzle | undefined {
  const demo = demoBuilds[(number / 2) % demoBuilds.length];
  const build =
    demo === undefined
      ? generateBuild(SEED, number)
      : { ...demo, values: randomBuild(demo.values, seeded(SEED, "moved", number)) };
  return drawPuzzle(build, 1 + (number % 3), seeded(SEED, "puzzle", number));
}

/** Whether every size came back on its own step, or others that meet every aim as well. */
function outcomeOf({ taken }: Puzzle, solution: Solution): "recovered" | "others" | "not" {
  if (solution.state !== "solved") return "not";
  const isBack = taken.every(({ path, size, step }) => {
    const found = solution.fields.find((one) => one.path === path);
    return found !== undefined && Math.abs(found.value - size) < 1e-3 * step.si;
  });
  if (isBack) return "recovered";
  return solution.aims.every(({ met }) => met) ? "others" : "not";
}

describe("sizes taken out of random builds", () => {
  it("come back to the step from what they gave", { timeout: 60_000 * (5 + BUILDS / 20) }, async () => {
    const seen = { recovered: 0, others: 0, not: 0 };
    const names = { aims: new Set<string>(), fields: new Set<string>() };
    let solving = 0;
    let last: Puzzle | undefined;
    for (let number = 0; number < BUILDS; number += 1) {
      const puzzle = puzzleOf(number);
      expect(puzzle, `puzzle ${number}`).toBeDefined();
      const begun = performance.now();
      const solution = await solve(puzzle!.build, { rules: [] });
      solving += performance.now() - begun;
      const outcome = outcomeOf(puzzle!, solution);
      const about = `${number}: ${puzzle!.aims} of ${puzzle!.taken.map(({ path, text }) => `${path} ${text}`).join(", ")}`;
      expect(outcome, about).not.toBe("not");
      seen[outcome] += 1;
      for (const aim of puzzle!.aims) names.aims.add(aim);
      for (const { path } of puzzle!.taken) names.fields.add(path);
      last = puzzle;
    }
    console.log(
      `${BUILDS} builds, ${names.fields.size} fields by ${names.aims.size} quantities: ${JSON.stringify(seen)}; solved in ${(solving / 1000).toFixed(1)} s`,
    );
    expect(seen.recovered + seen.others).toBe(BUILDS);
    expect(seen.others).toBeLessThanOrEqual(Math.max(1, MOST_OTHERS * BUILDS));
    expect(names.fields.size).toBeGreaterThan(Math.min(BUILDS / 2, 150));
    // A size that is not the one that was taken out is seen.
    const { build, taken, aims } = last!;
    const solution = await solve(build, { rules: [] });
    const [first, ...rest] = taken;
    const elsewhere = { ...first!, size: first!.size + first!.step.si };
    expect(outcomeOf({ build, aims, taken: [elsewhere, ...rest] }, solution)).not.toBe("recovered");
    // And so is an aim that the sizes cannot reach.
    const impossible = withField(build, `aims.${aims[0]}`, build.aims.get(aims[0]!)!.text.replace(/^/, "9"));
    expect(outcomeOf(last!, await solve(impossible, { rules: [] }))).toBe("not");
  });
});
