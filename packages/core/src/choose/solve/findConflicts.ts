import { MET } from "./fitAims.ts";
import { meetAims } from "./meetAims.ts";
import type { Trial } from "./Trial.ts";
import { type Aim, missOf } from "./Wanted.ts";

/** Aims that cannot be met together; none of them could be left out. */
export interface Conflict {
  readonly aims: readonly Aim[];
  /** Of an aim that cannot be met by itself: the nearest that it comes to, and the bounds that keep it there. */
  readonly alone?: Alone;
}

export interface Alone {
  /** [SI]; undefined where no sizes are without contradiction. */
  readonly nearest: number | undefined;
  /** Wanted dimensions, by their number, and the end of their range at which they stand; none where the turning point lies within. */
  readonly ends: readonly { readonly index: number; readonly end: "low" | "high" }[];
}

/** Share of a range within which a size stands at its end. */
const AT_END = 1e-6;
/** Share of a range by which a size is moved to see whether its end is what keeps an aim from being met. */
const NUDGE = 1e-4;

/**
 * The fewest aims that already cannot be met together. Aims are left out one after the other; where the rest still
 * cannot be met, the one that was left out is not to blame.
 */
function fewest(trial: Trial): Trial {
  const left = new Set<string>();
  for (const { id } of trial.aims) {
    left.add(id);
    const rest = trial.without(left);
    if (rest.aims.length === 0 || meetAims(rest).off <= MET) left.delete(id);
  }
  return trial.without(left);
}

function aloneAt(trial: Trial, aim: Aim, sizes: readonly number[]): Alone {
  const missAt = (at: readonly number[]): number => {
    const [value] = trial.reached(at);
    return value === undefined ? Number.POSITIVE_INFINITY : Math.abs(missOf(aim, value));
  };
  const [nearest] = trial.reached(sizes);
  const here = missAt(sizes);
  const point = trial.pointOf(sizes);
  const ends = point.flatMap((share, index) => {
    const { low, high } = trial.wanted[index]!;
    const end = share <= AT_END ? "low" : share >= 1 - AT_END ? "high" : undefined;
    if (end === undefined || low === high) return [];
    const inwards = (end === "low" ? NUDGE : -NUDGE) * (high - low);
    return missAt(sizes.with(index, sizes[index]! + inwards)) > here ? [{ index, end } as const] : [];
  });
  return { nearest, ends };
}

/** Sets of aims that are tried at most; with five aims that is every one. */
const MOST_TRIED = 64;

/** Every set of so many of some things. */
function* setsOf<T>(all: readonly T[], size: number, from = 0): Generator<readonly T[], void, void> {
  if (size === 0) yield [];
  else
    for (let first = from; first <= all.length - size; first += 1)
      for (const rest of setsOf(all, size - 1, first + 1)) yield [all[first]!, ...rest];
}

/** Sets of aims that pull against each other and hold no smaller such set, the smallest first. */
function* rivals(trial: Trial): Generator<readonly Aim[], void, void> {
  const found: (readonly Aim[])[] = [];
  let tried = 0;
  for (let size = 2; size <= trial.aims.length; size += 1)
    for (const aims of setsOf(trial.aims, size)) {
      if (found.some((smaller) => smaller.every((aim) => aims.includes(aim)))) continue;
      tried += 1;
      if (tried > MOST_TRIED) return;
      if (meetAims(trial.withAims(aims)).off <= MET) continue;
      found.push(aims);
      yield aims;
    }
}

/**
 * What keeps the aims from being met: first those that cannot be met by themselves, then, among the others, every set
 * that pulls against each other and holds no smaller one; an aim may stand in several. Of very many aims some sets
 * only, so that every aim that must give way stands in one. Empty where all can be met.
 */
export function findConflicts(trial: Trial): readonly Conflict[] {
  const conflicts: Conflict[] = [];
  const left = new Set<string>();
  for (const aim of trial.aims) {
    const single = trial.withAims([aim]);
    const { off, sizes } = meetAims(single);
    if (off <= MET) continue;
    conflicts.push({ aims: [aim], alone: aloneAt(single, aim, sizes) });
    left.add(aim.id);
  }
  const others = trial.without(left);
  if (others.aims.length < 2 || meetAims(others).off <= MET) return conflicts;
  for (const aims of rivals(others)) {
    conflicts.push({ aims });
    for (const { id } of aims) left.add(id);
  }
  for (;;) {
    const rest = trial.without(left);
    if (rest.aims.length < 2 || meetAims(rest).off <= MET) return conflicts;
    const { aims } = fewest(rest);
    conflicts.push({ aims });
    for (const { id } of aims) left.add(id);
  }
}
