import { easeAims } from "./easeAims.ts";
import { type Fit, fitAims, fitClose, MET } from "./fitAims.ts";
import { type Trial, worstMiss } from "./Trial.ts";

/** An aim counts as kept to a level when it is off by no more beyond it, in allowances. */
const TOUCH = 1e-3;
/** The level at which an aim is met, with room for that. */
const KEPT = MET - 2 * TOUCH;
const HALVINGS = 14;
/** Share of a level by which an aim is tried to be brought nearer, to see whether it is what keeps the level up. */
const LESS = 0.98;

/** What is allowed to each aim, in its allowances. */
type Levels = readonly number[];

/** Sizes that come nearest, and how far each aim has to be off there, in its allowances. */
export interface Nearest {
  readonly sizes: readonly number[];
  readonly levels: Levels;
}

/** Sizes at which every aim keeps to its level, from some places. */
function keepTo(trial: Trial, levels: Levels, near: readonly number[], thorough: boolean): Fit | undefined {
  const eased = easeAims(trial, levels);
  if (worstMiss(eased.misses(near)) <= TOUCH) return { sizes: near, off: 0 };
  for (const place of [near, trial.sizesAt(trial.wanted.map(() => 0.5))]) {
    const fit = fitClose(eased, place);
    if (fit.off <= TOUCH) return fit;
  }
  if (!thorough || trial.isDear) return undefined;
  const fit = fitAims(eased, near);
  return fit.off <= TOUCH ? fit : undefined;
}

/**
 * Sizes that come nearest to aims that cannot all be met: the one farthest off is as near as it can be brought, then
 * every aim is met that can be at no cost to that one, then the next farthest is brought as near as it can be, and so on.
 */
export function nearestSizes(trial: Trial, first: readonly number[]): Nearest {
  const settled = new Map<number, number>();
  let sizes = first;
  const missAt = (index: number) => Math.abs(trial.misses(sizes)[index]!);
  for (;;) {
    const open = trial.aims.map((_, index) => index).filter((index) => !settled.has(index));
    const worst = Math.max(0, ...open.map(missAt));
    const levelsAt = (level: number, changed?: number, to = KEPT): Levels =>
      trial.aims.map((_, index) => (index === changed ? to : (settled.get(index) ?? level)));
    if (worst <= MET) return { sizes, levels: levelsAt(KEPT) };
    // As near as the one farthest off can be brought, by halves of the way that is left (the far ones by its logarithm).
    let [low, high] = [KEPT, worst];
    for (let halving = 0; halving < HALVINGS && high > low * (1 + TOUCH); halving += 1) {
      const middle = Math.sqrt(low * high);
      const fit = keepTo(trial, levelsAt(middle), sizes, halving === 0);
      if (fit === undefined) low = middle;
      else {
        sizes = fit.sizes;
        high = Math.min(middle, Math.max(KEPT, ...open.map(missAt)));
      }
    }
    const level = high + 2 * TOUCH;
    for (const index of [...open].sort((a, b) => missAt(a) - missAt(b))) {
      const fit = keepTo(trial, levelsAt(level, index), sizes, true);
      if (fit === undefined) continue;
      sizes = fit.sizes;
      settled.set(index, KEPT);
    }
    const left = open.filter((index) => !settled.has(index));
    const keeping = left.filter(
      (index) => keepTo(trial, levelsAt(level, index, LESS * level), sizes, false) === undefined,
    );
    const [farthest] = [...left].sort((a, b) => missAt(b) - missAt(a));
    for (const index of keeping.length > 0 || farthest === undefined ? keeping : [farthest])
      settled.set(index, level);
  }
}

/** The aims that can be kept to, and of the others no more than they have to be off: what rounding is judged by. */
export function takenForGranted(trial: Trial, { levels }: Nearest): Trial {
  return easeAims(
    trial,
    levels.map((level) => (level > MET ? level : 0)),
  );
}
