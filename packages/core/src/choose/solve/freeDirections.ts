import { Matrix, SVD } from "ml-matrix";
import type { Trial } from "./Trial.ts";

/** Change of a wanted dimension, as a share of its range, for a derivative. */
const NUDGE = 1e-5;
/** A direction along which the aims change less than this, against the direction that moves them most, is free. */
const FLAT = 1e-5;

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

/**
 * Directions in which nothing that must be met exactly changes, in shares of the ranges: as many as dimensions may be
 * chosen freely.
 * @param sizes where the aims are met [SI]
 */
export function freeDirections(trial: Trial, sizes: readonly number[]): readonly (readonly number[])[] {
  const point = trial.pointOf(sizes);
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
