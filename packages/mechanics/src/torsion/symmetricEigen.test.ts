import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { symmetricEigen } from "./symmetricEigen.ts";

const matrices = fc
  .integer({ min: 1, max: 7 })
  .chain((n) =>
    fc
      .array(fc.array(between(-10, 10), { minLength: n, maxLength: n }), { minLength: n, maxLength: n })
      .map((rows) => rows.map((row, i) => row.map((value, j) => (j >= i ? value : rows[j]![i]!)))),
  );

test("a matrix with known eigenvalues", () => {
  const found = symmetricEigen([
    [2, -1, 0],
    [-1, 2, -1],
    [0, -1, 2],
  ]);
  [2 - Math.SQRT2, 2, 2 + Math.SQRT2].forEach((value, i) => {
    near(found[i]!.value, value, 1e-14);
  });
});

test("zeros on the diagonal, and eigenvalues far apart", () => {
  const swap = symmetricEigen([
    [0, 1],
    [1, 0],
  ]);
  near(swap[0]!.value, -1, 1e-15);
  near(swap[1]!.value, 1, 1e-15);
  // Determinant 1e-12 of two eigenvalues near 1e12 and 1e-12 / 1e12: the small one keeps its digits.
  const graded = symmetricEigen([
    [1e12, 1],
    [1, 2e-12],
  ]);
  near(graded[0]!.value / 1e-12, 1, 1e-12);
});

test("boundary", () => {
  expect(symmetricEigen([])).toEqual([]);
  refuses(() => symmetricEigen([[1, 2]]), "matrix[0]");
  const skew = [
    [1, 2],
    [3, 1],
  ];
  refuses(() => symmetricEigen(skew), "matrix[1][0]");
  refusesNonFinite(symmetricEigen, [
    [1, 0],
    [0, 2],
  ]);
});

property.prop([matrices])("A v = lambda v, vectors of length one and square to each other", (matrix) => {
  const found = symmetricEigen(matrix);
  expect(found).toHaveLength(matrix.length);
  const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0);
  found.forEach(({ value, vector }, i) => {
    matrix.forEach((row, j) => {
      near(dot(row, vector), value * vector[j]!, 1e-12);
    });
    found.forEach((other, j) => {
      near(dot(vector, other.vector), i === j ? 1 : 0, 1e-13);
    });
    if (i > 0) expect(value).toBeGreaterThanOrEqual(found[i - 1]!.value);
  });
  const trace = matrix.reduce((sum, row, i) => sum + row[i]!, 0);
  near(
    found.reduce((sum, { value }) => sum + value, 0),
    trace,
    1e-12,
  );
});
