import { solve } from "trialfit";
import { describe, expect, it } from "vitest";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { conflictFaults } from "./conflictFaults.ts";
import { crossPuzzle } from "./crossPuzzle.ts";
import { Wish } from "./solveGrid.ts";

/** Puzzles whose aims ask for too much. */
const PUZZLES = Number(process.env.TRIALFIT_CONFLICTS ?? 60);

describe("aims that ask for too much", () => {
  it("are named: no sizes meet them, and any one left out, some do", {
    timeout: 60_000 * (5 + PUZZLES / 10),
  }, async () => {
    const seen = {
      puzzles: 0,
      solved: 0,
      bySteps: 0,
      conflicts: 0,
      alone: 0,
      together: 0,
      several: 0,
      other: 0,
    };
    const faults: string[] = [];
    let solving = 0;
    for (let number = 0; number < PUZZLES; number += 1) {
      const puzzle = crossPuzzle(number);
      if (puzzle === undefined) continue;
      seen.puzzles += 1;
      const begun = performance.now();
      const solution = await solve(puzzle.build, { rules: [] });
      solving += performance.now() - begun;
      if (solution.state === "solved") seen.solved += 1;
      else if (solution.state !== "conflict") seen.other += 1;
      else if (solution.bySteps) seen.bySteps += 1;
      else {
        const wish = new Wish(puzzle.build);
        seen.conflicts += 1;
        if (solution.conflicts.length > 1) seen.several += 1;
        for (const { alone } of solution.conflicts) seen[alone === undefined ? "together" : "alone"] += 1;
        const about = `${number}: ${[...puzzle.build.aims].map(([id, { text }]) => `${id} ${text}`)} of ${[...puzzle.build.wanted].map(([path, { text }]) => `${path} ${text}`)}`;
        for (const fault of conflictFaults(wish, solution, puzzle.points, withDefaults(puzzle.build)))
          faults.push(`${about}: ${fault}`);
      }
    }
    console.log(`${JSON.stringify(seen)}; solved in ${(solving / 1000).toFixed(1)} s`);
    expect(faults.join("\n")).toBe("");
    expect(seen.alone).toBeGreaterThan(PUZZLES / 30);
    expect(seen.together).toBeGreaterThan(PUZZLES / 10);
  });
});
