import { type Build, type Solution, solve, withField } from "trialfit";
import { describe, expect, it } from "vitest";
import { seeded } from "../../packages/core/src/derive/seeded.ts";
import { generateBuild } from "../catalog/generateBuilds.ts";
import { drawPuzzle } from "./drawPuzzle.ts";
import { offBy, Wish } from "./solveGrid.ts";

/** Puzzles with more sizes than aims. */
const PUZZLES = Number(process.env.TRIALFIT_FAMILIES ?? 60);
const SEED = 20_261_211;
/** Steps that a size may take, where every combination of them is tried. */
const ROOM = { 2: 30, 3: 12 } as const;
const NOISE = 1 + 1e-6;

type Solved = Extract<Solution, { state: "solved" }>;

/** One aim fewer than sizes, each size still under an aim; every size within some steps of where it was taken from. */
function openPuzzle(number: number, isStated: boolean): Build | undefined {
  const random = seeded(SEED, "family", number);
  const count = (2 + (number % 2)) as 2 | 3;
  const puzzle = drawPuzzle(generateBuild(SEED, number), count, random);
  if (puzzle === undefined) return undefined;
  const { taken, build } = puzzle;
  const wanted = new Map(
    taken.map(({ path, size, step }) => {
      const one = build.wanted.get(path)!;
      const below = Math.round(ROOM[count] * random());
      const low = Math.max(one.low, size - below * step.si);
      const high = Math.min(one.high, size + (ROOM[count] - below) * step.si);
      return [path, { ...one, low, high, origin: low }] as const;
    }),
  );
  const left = puzzle.aims.slice(1);
  const text = (id: string) => build.aims.get(id)!.text;
  const asked = left.reduce(
    (one, id) => withField(one, `aims.${id}`, isStated ? text(id) : text(id).replace(/ ±.*/, "")),
    { ...build, wanted, aims: new Map() } as Build,
  );
  const wish = new Wish(asked);
  const before = wish.reached(wish.wanted.map(({ low }) => low));
  const isUsed = wish.wanted.every(({ low, high }, index) => {
    const moved = wish.reached(
      wish.wanted.map((one, other) => (other === index ? low + 0.7 * (high - low) : one.low)),
    );
    return moved.some((value, aim) => value !== before[aim]);
  });
  return isUsed ? asked : undefined;
}

/** The most that an aim without a stated allowance may be off: half a digit and half of its finest step, or as the answer itself is. */
function mostAllowed(wish: Wish, { aims, fields }: Solved, aim: number): number {
  const sizes = fields.map(({ value }) => value);
  const at = wish.reached(sizes)[aim]!;
  const effects = wish.wanted
    .map(({ step }, index) => Math.abs(wish.reached(sizes.with(index, sizes[index]! + step / 2))[aim]! - at))
    .filter((one) => one > 0);
  const { allowance } = wish.aims[aim]!;
  return Math.max(allowance + Math.min(...effects) * 1.1, offBy(wish.aims[aim]!, aims[aim]!.reached));
}

/** What is wrong with a solution's answer and members. */
function faultsOf(wish: Wish, solution: Solved, isStated: boolean): readonly string[] {
  const faults: string[] = [];
  for (const [index, { allowance, id }] of solution.aims.entries()) {
    const most = isStated ? wish.aims[index]!.allowance : mostAllowed(wish, solution, index);
    if (allowance > most * NOISE) faults.push(`${id} is allowed ${allowance}, not ${most}`);
  }
  const main = solution.fields.map(({ value }) => value);
  const members = (solution.family?.members ?? []).map((member) => member.map(({ value }) => value));
  for (const sizes of [main, ...members]) {
    if (!wish.isOrderable(sizes)) faults.push(`${sizes} is off the steps or bounds`);
    for (const [index, value] of wish.reachedAnew(sizes).entries()) {
      const { id, allowance } = solution.aims[index]!;
      const off = offBy(wish.aims[index]!, value);
      if (!(off <= allowance * NOISE)) faults.push(`${sizes}: ${id} is off by ${off}, allowed ${allowance}`);
    }
  }
  if (members.some((one) => one.every((size, index) => size === main[index])))
    faults.push("the answer is a member");
  if (new Set(members.map(String)).size < members.length) faults.push("a member stands twice");
  return faults;
}

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
      faults.push(...faultsOf(wish, solution, isStated).map((fault) => `${about}: ${fault}`));
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
