import { type Fit, fitClose, MET } from "./fitAims.ts";
import { roundFreely } from "./roundSizes.ts";
import { sizeAt, stepsInside, stepsNear } from "./steps.ts";
import { type Trial, worstMiss } from "./Trial.ts";

/** Members that are shown. */
const MEMBERS = 9;
/** Steps of the leading dimension that are tried: where the others follow from it, and where more may be chosen. */
const TRIED = { alone: 240, more: 12 } as const;
/** Steps up and down that are tried of the dimensions that make up for another: more where none is found so. */
const REACHES = [1, 3] as const;
/** Steps below and above the solution that are tried where none is found so either. */
const BESIDE = 4;
/** Wanted dimensions up to which more are tried. */
const MOST_WIDELY = 4;

interface Along {
  /** The exact solution, and the same as it can be ordered. */
  readonly fit: Fit;
  readonly found: readonly number[];
  /** The dimensions that move along the family: the one along which it is followed first. */
  readonly moving: readonly number[];
  readonly freedom: number;
}

interface Reaching extends Along {
  readonly reach: number;
}

/** Some of a list, evenly over it, its ends among them. */
function spread<T>(list: readonly T[], count: number): readonly T[] {
  if (list.length <= count) return list;
  return Array.from(
    { length: count },
    (_, one) => list[Math.round((one * (list.length - 1)) / (count - 1))]!,
  );
}

/** The best on the steps with one dimension held on one of its own, the others having made up for it exactly. */
function memberAt(
  trial: Trial,
  { fit, freedom, reach }: Reaching,
  lead: number,
  size: number,
  near: readonly number[],
) {
  const held = trial.holding(lead, size);
  const from = [near, fit.sizes].map((sizes) => sizes.with(lead, size));
  const middle = held.sizesAt(held.wanted.map(() => 0.5));
  for (const place of [...from, middle]) {
    const exact = fitClose(held, place);
    if (exact.off <= MET) return { exact, rounded: roundFreely(held, exact, freedom - 1, reach) };
  }
  return undefined;
}

/** Members that keep to every allowance, one at most for each step of a dimension that is tried. */
function membersAlong(trial: Trial, along: Reaching, lead: number): readonly (readonly number[])[] {
  const { fit, freedom } = along;
  const wanted = trial.wanted[lead]!;
  const [first, last] = stepsInside(wanted);
  const count = Math.min(last - first + 1, freedom > 1 ? TRIED.more : TRIED.alone);
  const sizes = Array.from({ length: Math.max(0, count) }, (_, one) =>
    sizeAt(Math.round(first + (one * (last - first)) / Math.max(1, count - 1)), wanted),
  );
  const here = fit.sizes[lead]!;
  const sides = [sizes.filter((size) => size < here).reverse(), sizes.filter((size) => size >= here)];
  return sides.flatMap((side) => {
    let near = fit.sizes;
    return side.flatMap((size) => {
      const member = memberAt(trial, along, lead, size, near);
      if (member === undefined) return [];
      near = member.exact.sizes;
      return member.rounded.off <= MET ? [member.rounded.sizes] : [];
    });
  });
}

/** Members along one dimension after the other, until there are enough. */
function membersWithin(trial: Trial, along: Reaching): readonly (readonly number[])[] {
  const members = new Map<string, readonly number[]>();
  for (const index of along.moving) {
    for (const one of membersAlong(trial, along, index)) members.set(one.join(), one);
    members.delete(along.found.join());
    if (members.size >= MEMBERS) break;
  }
  return [...members.values()];
}

/** Every way of taking one of each of some choices. */
function* waysOf(choices: readonly (readonly number[])[]): Generator<readonly number[], void, void> {
  const [first, ...rest] = choices;
  if (first === undefined) yield [];
  else for (const one of first) for (const others of waysOf(rest)) yield [one, ...others];
}

/** Members on the steps about the solution itself: where no descent leads to any, one may lie there all the same. */
function membersBeside(trial: Trial, { found }: Along): readonly (readonly number[])[] {
  if (trial.isDear) return [];
  const choices = trial.wanted.map((wanted, index) =>
    wanted.low === wanted.high ? [wanted.low] : stepsNear(found[index]!, wanted, BESIDE),
  );
  return [...waysOf(choices)].filter(
    (sizes) => sizes.join() !== found.join() && worstMiss(trial.misses(sizes)) <= MET,
  );
}

/**
 * Members of a family that can be ordered, each the best on the steps for one step of a dimension: those that keep to
 * every allowance, evenly along the first dimension that moves. Where these are few, the others are followed as well.
 */
export function familyMembers(trial: Trial, along: Along): readonly (readonly number[])[] {
  const before = (a: readonly number[], b: readonly number[]) =>
    along.moving.map((index) => a[index]! - b[index]!).find((off) => off !== 0) ?? 0;
  for (const reach of REACHES) {
    if (reach > 1 && trial.wanted.length > MOST_WIDELY) break;
    const members = membersWithin(trial, { ...along, reach });
    if (members.length > 0) return spread([...members].sort(before), MEMBERS);
  }
  if (trial.wanted.length > MOST_WIDELY) return [];
  return spread([...membersBeside(trial, along)].sort(before), MEMBERS);
}
