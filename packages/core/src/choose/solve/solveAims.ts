import type { Catalog } from "../../derive/rootsOf.ts";
import type { Steps } from "../../derive/Steps.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import { findConflict } from "./findConflict.ts";
import { type Family, findFamily } from "./findFamily.ts";
import { type Fit, fitAims, MET, otherFits } from "./fitAims.ts";
import { roundFreely, roundSizes } from "./roundSizes.ts";
import { Trial } from "./Trial.ts";
import { type Aim, missOf, type Wanted } from "./Wanted.ts";

/** What an aim comes to with the sizes found. */
export interface AimReached {
  readonly aim: Aim;
  /** [SI]; undefined where the sizes contradict each other. */
  readonly value: number | undefined;
  readonly met: boolean;
}

export type Solved =
  /** Inputs are missing that are not wanted. */
  | { readonly state: "missing"; readonly missing: readonly string[] }
  /** Wanted dimensions on which no aim rests. */
  | { readonly state: "aimless"; readonly idle: readonly string[] }
  | {
      readonly state: "solved";
      /** As the aims give them, and as they can be ordered; by wanted dimension [SI]. */
      readonly exact: readonly number[];
      readonly sizes: readonly number[];
      readonly reached: readonly AimReached[];
      readonly family?: Family;
    }
  | {
      readonly state: "conflict";
      /** The fewest aims that cannot be met together. */
      readonly conflict: readonly Aim[];
      /** The sizes that come nearest to all, and what they reach. */
      readonly sizes: readonly number[];
      readonly reached: readonly AimReached[];
      /** Met exactly, but not by sizes that can be ordered in these steps. */
      readonly bySteps: boolean;
    };

function reachedAt(trial: Trial, sizes: readonly number[]): readonly AimReached[] {
  return trial.reached(sizes).map((value, index) => {
    const aim = trial.aims[index]!;
    return { aim, value, met: value !== undefined && Math.abs(missOf(aim, value)) <= MET };
  });
}

/** The same with what half a step of every wanted dimension does, allowed to aims that state no allowance. */
function allowSteps(trial: Trial, sizes: readonly number[]): Trial {
  const half = trial.wanted.map(({ step }) => step / 2);
  const at = trial.reached(sizes);
  const moved = half.map((change, index) => trial.reached(sizes.with(index, sizes[index]! + change)));
  const aims = trial.aims.map((aim, index) => {
    if (aim.stated) return aim;
    const steps = moved.reduce((sum, values) => sum + Math.abs((values[index] ?? 0) - (at[index] ?? 0)), 0);
    return { ...aim, allowance: aim.allowance + steps };
  });
  return trial.withAims(aims);
}

/** Sizes as the aims give them, and on steps, with what steps are allowed to do. */
interface Rounded {
  readonly exact: Fit;
  readonly stepped: Trial;
  readonly rounded: Fit;
}

/** Sizes that meet the aims, put on steps. */
function* roundedFrom(trial: Trial, exact: Fit): Steps<Rounded> {
  const stepped = allowSteps(trial, exact.sizes);
  const equals = trial.aims.filter(({ kind }) => kind === "equal").length;
  const rounded =
    equals < trial.wanted.length ? yield* roundFreely(stepped, exact) : roundSizes(stepped, exact);
  return { exact, stepped, rounded };
}

/**
 * Sizes of the wanted dimensions at which the aims are met, at nominal values; whether they hold over the tolerances is
 * for the rules to say.
 * @param values fields of the build, defaults filled in, without the wanted ones
 */
export function* solveAims(
  values: ReadonlyMap<string, FieldValue>,
  catalog: Catalog,
  wanted: readonly Wanted[],
  aims: readonly Aim[],
): Steps<Solved> {
  const trial = Trial.of(values, catalog, wanted, aims);
  const missing = [...new Set(aims.flatMap(({ id }) => trial.lacking(id)))].sort();
  if (missing.length > 0) return { state: "missing", missing };
  const used = new Set(aims.flatMap(({ id }) => trial.restsOn(id)));
  const idle = wanted.filter((one) => !used.has(one)).map(({ path }) => path);
  if (idle.length > 0) return { state: "aimless", idle };
  const first = yield* fitAims(trial);
  const tried = [yield* roundedFrom(trial, first)];
  // Where the sizes found cannot be put on steps, others that meet the aims as well perhaps can.
  if (first.off <= MET && tried[0]!.rounded.off > MET)
    for (const fit of yield* otherFits(trial, first)) tried.push(yield* roundedFrom(trial, fit));
  const { exact, stepped, rounded } = tried.reduce((best, one) =>
    one.rounded.off < best.rounded.off ? one : best,
  );
  if (rounded.off > MET)
    return {
      state: "conflict",
      conflict: exact.off > MET ? yield* findConflict(trial) : aims,
      sizes: exact.off > MET ? exact.sizes : rounded.sizes,
      reached: reachedAt(stepped, exact.off > MET ? exact.sizes : rounded.sizes),
      bySteps: exact.off <= MET,
    };
  const family = yield* findFamily(stepped, exact);
  return {
    state: "solved",
    exact: exact.sizes,
    sizes: rounded.sizes,
    reached: reachedAt(stepped, rounded.sizes),
    ...(family === undefined ? {} : { family }),
  };
}
