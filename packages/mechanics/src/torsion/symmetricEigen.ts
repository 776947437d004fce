import { finite, requireAll, requireThat } from "../check/requireAll.ts";

/** Jacobi's method converges quadratically: matrices of a crankshaft's size need fewer than ten sweeps. */
const MOST_SWEEPS = 60;

function requireSymmetric(matrix: readonly (readonly number[])[]): void {
  matrix.forEach((row, i) => {
    requireThat(row.length === matrix.length, `matrix[${i}]`, row.length, `${matrix.length} numbers`);
    row.forEach((value, j) => {
      requireAll(finite, { [`matrix[${i}][${j}]`]: value });
    });
  });
  matrix.forEach((row, i) => {
    row.slice(0, i).forEach((value, j) => {
      requireThat(value === matrix[j]![i], `matrix[${i}][${j}]`, value, `the same as matrix[${j}][${i}]`);
    });
  });
}

/** Turns rows and columns p and q so that the element (p, q) becomes zero, and the vectors with them. */
function rotate(a: number[][], vectors: number[][], p: number, q: number): void {
  const half = (a[q]![q]! - a[p]![p]!) / (2 * a[p]![q]!);
  // The smaller of the two angles that make the element zero; it keeps the order of the diagonal.
  const t = (half < 0 ? -1 : 1) / (Math.abs(half) + Math.hypot(half, 1));
  const c = 1 / Math.hypot(t, 1);
  const s = t * c;
  for (const row of [...a, ...vectors]) {
    const [ap, aq] = [row[p]!, row[q]!];
    row[p] = c * ap - s * aq;
    row[q] = s * ap + c * aq;
  }
  for (let k = 0; k < a.length; k++) {
    const [pk, qk] = [a[p]![k]!, a[q]![k]!];
    a[p]![k] = c * pk - s * qk;
    a[q]![k] = s * pk + c * qk;
  }
  a[p]![q] = 0;
  a[q]![p] = 0;
}

/**
 * Eigenvalues and eigenvectors of a symmetric matrix by Jacobi's cyclic rotations.
 * @param matrix square and symmetric, rows of finite numbers
 * @returns eigenvalues from the least up, each with its eigenvector of length one
 * @throws RangeError when the matrix is not square, not symmetric or not finite
 *
 * Source: Jacobi's method, from memory.
 */
export function symmetricEigen(
  matrix: readonly (readonly number[])[],
): { value: number; vector: readonly number[] }[] {
  requireSymmetric(matrix);
  const n = matrix.length;
  const a = matrix.map((row) => [...row]);
  const vectors = matrix.map((_, i) => matrix.map((_, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let turned = false;
    for (let p = 0; p < n - 1; p++) {
      for (let q = p + 1; q < n; q++) {
        // Measured against its own diagonal, so that small eigenvalues keep their digits.
        const scale = Math.sqrt(Math.abs(a[p]![p]!)) * Math.sqrt(Math.abs(a[q]![q]!));
        if (Math.abs(a[p]![q]!) > Number.EPSILON * scale) {
          rotate(a, vectors, p, q);
          turned = true;
        }
      }
    }
    if (!turned) break;
  }
  return a
    .map((row, i) => ({ value: row[i]!, vector: vectors.map((components) => components[i]!) }))
    .sort((one, other) => one.value - other.value);
}
