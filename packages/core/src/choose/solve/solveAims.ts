import type { Catalog } from "../../derive/rootsOf.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import { allowFinest, allowReached, allowSteps } from "./allowSteps.ts";
import { explainUnsolved } from "./explainUnsolved.ts";
import { findFamily } from "./findFamily.ts";
import { findRanges } from "./findRanges.ts";
import { type Fit, MET, otherFits } from "./fitAims.ts";
import { freeDirections } from "./freeDirections.ts";
import { meetAims } from "./meetAims.ts";
import { reachedAt } from "./reachedAt.ts";
import { roundFreely } from "./roundSizes.ts";
import type { Solved } from "./Solved.ts";
import { hasSteps } from "./steps.ts";
import { Trial, worstMiss } from "./Trial.ts";
import type { Aim, Wanted } from "./Wanted.ts";

/** Part of what half the finest step does, from which on farther sizes are not worth looking for. */
const NEAR = 0.1;
/** Steps to each side that are tried of sizes that may be chosen freely, while their neighbours do not come near enough. */
const WIDER = [1, 3, 8];
/** The same where every size that is tried takes a search of its own. */
const DEAR = [1];
/** Dimensions that are chosen freely at most when it goes wide: each takes as many descents as the ones before together. */
const MOST_WIDE = 2;

/** Sizes on steps that miss least by the finest steps: neighbours of the exact ones, then others ever farther off. */
function roundWidely(finest: Trial, exact: Fit, freedom: number): Fit {
  const reaches = finest.isDear || freedom === 0 || freedom > MOST_WIDE ? DEAR : WIDER;
  let best: Fit | undefined;
  for (const wide of reaches) {
    const one = roundFreely(finest, exact, freedom, 1, wide);
    if (best === undefined || one.off < best.off) best = one;
    if (best.off <= NEAR) break;
  }
  return best!;
}

/** Sizes put on steps: so that they miss least by the finest steps, and where that is too far off, by all of them. */
function roundedFrom(trial: Trial, exact: Fit) {
  const stepped = allowSteps(trial, exact.sizes);
  const finest = allowFinest(trial, exact.sizes);
  const freedom = exact.off <= MET ? freeDirections(trial, exact.sizes).length : 0;
  const offAt = (sizes: readonly number[]) => worstMiss(stepped.misses(sizes));
  const { sizes } = roundWidely(finest, exact, freedom);
  const rounded = offAt(sizes) <= MET ? { sizes, off: offAt(sizes) } : roundFreely(stepped, exact, freedom);
  // By the finest steps where the sizes came to stand.
  return { exact, finest: allowFinest(trial, rounded.sizes), rounded };
}

/** What is known once sizes that meet the aims stand on their steps. */
function solvedAt(finest: Trial, exact: Fit, rounded: Fit): Solved {
  const judged = allowReached(finest, rounded.sizes);
  const found = {
    state: "solved",
    exact: exact.sizes,
    sizes: rounded.sizes,
    reached: reachedAt(judged, rounded.sizes),
  } as const;
  if (judged.aims.every(({ kind }) => kind !== "equal"))
    return { ...found, ranges: findRanges(judged, rounded.sizes) };
  const family = findFamily(judged, exact, rounded.sizes);
  if (family === undefined) return found;
  const reached = family.members.map((sizes) => reachedAt(judged, sizes));
  return { ...found, family: { ...family, reached } };
}

/**
 * Sizes of the wanted dimensions at which the aims are met, at nominal values; whether they hold over the tolerances is
 * for the rules to say.
 * @param values fields of the build, defaults filled in, without the wanted ones
 */
export function solveAims(
  values: ReadonlyMap<string, FieldValue>,
  catalog: Catalog,
  wanted: readonly Wanted[],
  aims: readonly Aim[],
): Solved {
  const trial = Trial.of(values, catalog, wanted, aims);
  const missing = [...new Set(aims.flatMap(({ id }) => trial.lacking(id)))].sort();
  if (missing.length > 0) return { state: "missing", missing };
  const used = new Set(aims.flatMap(({ id }) => trial.restsOn(id)));
  const idle = wanted.filter((one) => !used.has(one)).map(({ path }) => path);
  if (idle.length > 0) return { state: "aimless", idle };
  const first = meetAims(trial);
  const tried = [roundedFrom(trial, first)];
  // Where the sizes found cannot be put on steps, others that meet the aims as well perhaps can.
  if (first.off <= MET && tried[0]!.rounded.off > MET)
    tried.push(...otherFits(trial, first).map((fit) => roundedFrom(trial, fit)));
  const { exact, finest, rounded } = tried.reduce((best, one) =>
    one.rounded.off < best.rounded.off ? one : best,
  );
  // A bound that leaves an aim off by no more than rounding does is no conflict.
  const isMet = rounded.off <= MET && (first.off <= MET || worstMiss(finest.misses(rounded.sizes)) <= MET);
  return !isMet || !wanted.every(hasSteps)
    ? explainUnsolved(trial, exact, rounded)
    : solvedAt(finest, exact, rounded);
}
