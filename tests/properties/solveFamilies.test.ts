import { solve } from "trialfit";
import { describe, expect, it } from "vitest";
import { familyFaults } from "./familyFaults.ts";
import { openPuzzle } from "./openPuzzle.ts";
import { offBy, Wish } from "./solveGrid.ts";

/** Puzzles with more sizes than aims. */
const PUZZLES = Number(process.env.TRIALFIT_FAMILIES ?? 60);

describe.each([
  ["stated", true],
  ["default", false],
] as const)("families of random builds, with %s allowances", (_, isStated) => {
  it("consist of sizes on steps that meet the aims, and are not empty where there are some", {
    timeout: 60_000 * (5 + PUZZLES / 10),
  }, async () => {
    const seen = {
      puzzles: 0,
      families: 0,
      members: 0,
      solvable: 0,
      solved: 0,
      withOthers: 0,
      listed: 0,
      points: 0,
    };
    const faults: string[] = [];
    for (let number = 0; number < PUZZLES; number += 1) {
      const build = openPuzzle(number, isStated);
      if (build === undefined) continue;
      seen.puzzles += 1;
      const wish = new Wish(build);
      const solution = await solve(build, { rules: [] });
      const about = `${number}: ${wish.aims.map(({ id }) => id)} of ${wish.wanted.map(({ path }) => path)}`;
      const allowances =
        solution.state === "solved"
          ? solution.aims.map(({ allowance }) => allowance)
          : wish.aims.map(({ allowance }) => allowance);
      let meeting = 0;
      for (const sizes of wish.steps()) {
        seen.points += 1;
        const isMet = wish
          .reached(sizes)
          .every((value, index) => offBy(wish.aims[index]!, value) <= allowances[index]! * (1 - 1e-6));
        if (isMet) meeting += 1;
      }
      if (meeting > 0) seen.solvable += 1;
      if (solution.state !== "solved") {
        if (meeting > 0) faults.push(`${about}: ${meeting} solutions on steps, but ${solution.state}`);
        continue;
      }
      seen.solved += 1;
      faults.push(...familyFaults(wish, solution, isStated).map((fault) => `${about}: ${fault}`));
      if (solution.family === undefined) continue;
      seen.families += 1;
      seen.members += solution.family.members.length;
      if (meeting < 2) continue;
      seen.withOthers += 1;
      if (solution.family.members.length > 0) seen.listed += 1;
      else faults.push(`${about}: ${meeting} on steps, none listed`);
    }
    console.log(JSON.stringify(seen));
    expect(faults.join("\n")).toBe("");
    expect(seen.families).toBeGreaterThan(PUZZLES / 4);
    expect(seen.withOthers).toBeGreaterThan(PUZZLES / 10);
  });
});
