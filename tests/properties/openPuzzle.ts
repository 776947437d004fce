import { type Build, withField } from "trialfit";
import { seeded } from "../../packages/core/src/derive/seeded.ts";
import { generateBuild } from "../catalog/generateBuilds.ts";
import { drawPuzzle } from "./drawPuzzle.ts";
import { Wish } from "./solveGrid.ts";

const SEED = 20_261_211;
/** Steps that a size may take, where every combination of them is tried. */
const ROOM = { 2: 30, 3: 12 } as const;

/** One aim fewer than sizes, each size still under an aim; every size within some steps of where it was taken from. */
export function openPuzzle(number: number, isStated: boolean): Build | undefined {
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
