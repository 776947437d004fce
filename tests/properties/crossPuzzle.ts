import { type Build, fromSi, quantities, unitOf, withField } from "trialfit";
import { seeded } from "../../packages/core/src/derive/seeded.ts";
import { generateBuild } from "../catalog/generateBuilds.ts";
import { drawPuzzle } from "./drawPuzzle.ts";
import { Wish } from "./solveGrid.ts";

const SEED = 20_261_212;
/** Points of the grid on each size, by how many sizes there are. */
const POINTS = { 1: 1500, 2: 50 } as const;

/** More aims than sizes, each with room for what lies between two points of the grid; some moved beyond what goes together. */
export function crossPuzzle(number: number): { build: Build; points: number } | undefined {
  const random = seeded(SEED, "conflict", number);
  const sizes = (1 + (number % 2)) as 1 | 2;
  const puzzle = drawPuzzle(generateBuild(SEED, number), sizes + 1, random);
  if (puzzle === undefined) return undefined;
  const [given, ...left] = puzzle.taken;
  const step = given!.step.size * (1 + Math.round(30 * random()));
  const text = puzzle.build.wanted.get(given!.path)!.text;
  const words = /^\? (.*?) to /
    .exec(text)![1]!
    .replace(/-?[\d.]+/, (low) => String(Number((Number(low) + step).toPrecision(10))));
  const fixed = { ...puzzle.build, wanted: new Map(puzzle.build.wanted) };
  fixed.wanted.delete(given!.path);
  const build = withField(fixed, given!.path, words);
  const wish = new Wish(build);
  const middle = wish.wanted.map(({ low, high }) => (low + high) / 2);
  const at = wish.reached(middle);
  const points = POINTS[left.length as 1 | 2];
  if (at.some((value) => value === undefined)) return undefined;
  const asked = wish.aims.reduce((one, { id, value }, index) => {
    const { unit } = quantities.get(id)!;
    const cell = wish.wanted.reduce((sum, { low, high }, at_) => {
      const [less, more] = [low, high].map((size) => wish.reached(middle.with(at_, size))[index] ?? value);
      return sum + Math.abs(more! - less!) / points;
    }, 0);
    const width = Math.max(cell, 1e-6 * Math.abs(value)) * 1.5;
    const print = (si: number) =>
      `${Number(fromSi(si, unitOf(unit)).toPrecision(12))}${unit === "1" ? "" : ` ${unit}`}`;
    // Two of three puzzles ask of each aim what it comes to elsewhere: each can be met, all of them hardly.
    const place = wish.wanted.map(({ low, high }) => low + random() * (high - low));
    const wantedHere = number % 3 === 0 ? value : (wish.reached(place)[index] ?? value);
    const words_ = random() < 0.3 ? (random() < 0.5 ? `at least ` : `at most `) : "";
    return withField(
      one,
      `aims.${id}`,
      `${words_}${print(wantedHere)} ± ${Number(fromSi(width, unitOf(unit)).toPrecision(6))}`,
    );
  }, build);
  return { build: asked, points };
}
