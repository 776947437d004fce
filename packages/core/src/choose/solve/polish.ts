import { Matrix, solve } from "ml-matrix";
import { type Trial, worstMiss } from "./Trial.ts";

const ROUNDS = 40;
const HALVINGS = 10;
/** Change of a wanted dimension, as a share of its range, for a derivative. */
const NUDGE = 1e-6;

const inside = (share: number): number => Math.min(1, Math.max(0, share));

function sumOfSquares(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}

/** How each miss changes with each wanted dimension, at a place in shares of their ranges. */
function slopesAt(at: (point: readonly number[]) => readonly number[], point: readonly number[]): Matrix {
  const columns = point.map((share, index) => {
    const [less, more] = [inside(share - NUDGE), inside(share + NUDGE)];
    const [below, above] = [at(point.with(index, less)), at(point.with(index, more))];
    return above.map((miss, aim) => (miss - below[aim]!) / (more - less));
  });
  return new Matrix(columns).transpose();
}

/** Whether a step would leave the range of a dimension that lies at its end. */
const leaves = (share: number, step: number): boolean => (share <= 0 && step > 0) || (share >= 1 && step < 0);

/**
 * The step to where straight lines meet, least squares where they do not; dimensions at the end of their range that it
 * would carry out of it stay there, and the others make up for it.
 */
function stepFrom(slopes: Matrix, misses: readonly number[], point: readonly number[]): readonly number[] {
  const free = point.map((_, index) => index);
  while (free.length > 0) {
    const rows = slopes.subMatrixColumn(free).to2DArray();
    // The library wants as many rows as columns: what is added says nothing.
    while (rows.length < free.length) rows.push(free.map(() => 0));
    const goal = rows.map((_, index) => misses[index] ?? 0);
    const found = solve(new Matrix(rows), Matrix.columnVector(goal), true).to1DArray();
    const leaving = free.findIndex((dimension, index) => leaves(point[dimension]!, found[index]!));
    if (leaving < 0) return point.map((_, dimension) => found[free.indexOf(dimension)] ?? 0);
    free.splice(leaving, 1);
  }
  return point.map(() => 0);
}

/** The part of a step that leads to the first end of a range, at most the whole. */
function room(point: readonly number[], step: readonly number[]): number {
  return point.reduce((part, share, index) => {
    const by = step[index]!;
    return by === 0 ? part : Math.min(part, by > 0 ? share / by : (share - 1) / by);
  }, 1);
}

/**
 * Goes on from a place by whole steps to where straight lines meet (Gauss and Newton), each halved until it betters
 * something: it gets through where aims nearly ask for the same, and a damped descent creeps.
 * @param sizes where to begin [SI]
 * @returns sizes that are no worse [SI]
 */
export function polish(trial: Trial, sizes: readonly number[]): readonly number[] {
  const at = (point: readonly number[]) => trial.misses(trial.sizesAt(point));
  let point = trial.pointOf(sizes).map(inside);
  let misses = at(point);
  for (let round = 0; round < ROUNDS && worstMiss(misses) > 0; round += 1) {
    const step = stepFrom(slopesAt(at, point), misses, point);
    const most = room(point, step);
    let better: readonly number[] | undefined;
    for (let part = most; better === undefined && part > most * 2 ** -HALVINGS; part /= 2) {
      const next = point.map((share, index) => inside(share - part * step[index]!));
      if (sumOfSquares(at(next)) < sumOfSquares(misses)) better = next;
    }
    if (better === undefined) break;
    point = [...better];
    misses = at(point);
  }
  return trial.sizesAt(point);
}
