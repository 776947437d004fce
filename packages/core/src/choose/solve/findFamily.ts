import { Matrix, SVD } from "ml-matrix";
import type { Steps } from "../../derive/Steps.ts";
import { type Fit, fitAims, MET } from "./fitAims.ts";
import { roundSizes } from "./roundSizes.ts";
import type { Trial } from "./Trial.ts";

/** Other sizes at which the aims are met as well. */
export interface Family {
  /** How many of the wanted dimensions may be chosen freely. */
  readonly freedom: number;
  /** Paths of the dimensions that move along the family, with the change of each for one unit of the first [SI]. */
  readonly moves: readonly { readonly path: string; readonly change: number }[];
  /** Some of its members, along the first dimension that moves; sizes [SI] as they can be ordered. */
  readonly members: readonly (readonly number[])[];
}

/** Change of a wanted dimension, as a share of its range, for a derivative. */
const NUDGE = 1e-5;
/** A direction along which the aims change less than this, against the direction that moves them most, is free. */
const FLAT = 1e-5;
const MEMBERS = 9;
/** A dimension that moves less than this, against the one that moves most, stays as it is. */
const STILL = 1e-4;

/** Derivatives of the misses of all aims that must be met exactly, at a place in shares of the ranges. */
function slopes(trial: Trial, point: readonly number[]): number[][] {
  const at = (index: number, change: number) =>
    trial.misses(trial.sizesAt(point.with(index, point[index]! + change)));
  const columns = trial.wanted.map((_, index) => {
    const [less, more] = [at(index, -NUDGE), at(index, NUDGE)];
    return more.map((miss, aim) => (miss - less[aim]!) / (2 * NUDGE));
  });
  return trial.aims.flatMap(({ kind }, aim) =>
    kind === "equal" ? [columns.map((column) => column[aim]!)] : [],
  );
}

/** Directions in which nothing that must be met exactly changes. */
function freeDirections(trial: Trial, point: readonly number[]): readonly (readonly number[])[] {
  const count = trial.wanted.length;
  const rows = slopes(trial, point);
  if (rows.length === 0) return point.map((_, index) => point.map((__, other) => (other === index ? 1 : 0)));
  const padded = [
    ...rows,
    ...Array.from({ length: Math.max(0, count - rows.length) }, () => point.map(() => 0)),
  ];
  const { rightSingularVectors, diagonal } = new SVD(new Matrix(padded), { autoTranspose: true });
  const most = Math.max(...diagonal);
  return diagonal.flatMap((size, index) =>
    size <= FLAT * most ? [rightSingularVectors.getColumn(index)] : [],
  );
}

/** The family that goes through a solution, or undefined where it is the only one. */
export function* findFamily(trial: Trial, fit: Fit): Steps<Family | undefined> {
  const point = trial.pointOf(fit.sizes);
  const free = freeDirections(trial, point);
  const [direction] = free;
  if (direction === undefined) return undefined;
  const change = (index: number) =>
    direction[index]! * (trial.wanted[index]!.high - trial.wanted[index]!.low);
  const most = Math.max(...direction.map(Math.abs));
  const moving = trial.wanted
    .map((wanted, index) => ({ wanted, index }))
    .filter(({ index }) => Math.abs(direction[index]!) > STILL * most)
    .sort((a, b) => Math.abs(direction[b.index]!) - Math.abs(direction[a.index]!));
  const lead = moving[0]!;
  const members: (readonly number[])[] = [];
  for (let number = 0; number < MEMBERS; number += 1) {
    const share = number / (MEMBERS - 1);
    const { low, high, step } = lead.wanted;
    const size = Math.round((low + share * (high - low)) / step) * step;
    const held = trial.holding(lead.index, size);
    const found = roundSizes(held, yield* fitAims(held, fit.sizes));
    if (found.off <= MET && !members.some((one) => one.every((value, at) => value === found.sizes[at])))
      members.push(found.sizes);
    yield;
  }
  return {
    freedom: free.length,
    moves: moving.map(({ wanted: { path }, index }) => ({
      path,
      change: change(index) / change(lead.index),
    })),
    members,
  };
}
