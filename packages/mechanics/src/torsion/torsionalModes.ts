import { symmetricEigen } from "./symmetricEigen.ts";
import { requireTorsionalChain, type TorsionalChain } from "./TorsionalChain.ts";

/** A natural mode of a torsional chain. */
export interface TorsionalMode {
  /** natural angular frequency [rad/s]; over 2 pi it is the frequency in Hz */
  readonly angularFrequency: number;
  /** twist of each disc [-], scaled so that the largest is +1; below some 1e-12 it is rounding, not motion */
  readonly shape: readonly number[];
}

/**
 * Natural frequencies and modes of a torsional chain: omega^2 are the eigenvalues of J^-1 K, K tridiagonal. The
 * eigenvalues are found in the twists of the springs, k_i (1/J_i + 1/J_(i+1)) on the diagonal and
 * -sqrt(k_i k_(i+1))/J_(i+1) beside it: the same values without the rigid turn, which is 0 exactly.
 * @param chain discs and springs, free at both ends
 * @returns one mode for each disc, from the lowest frequency; the first is the rigid turn, 0 rad/s. Screening:
 * a crankshaft's stiffnesses are known to some 20 %, its frequencies to half of that
 * @throws RangeError when the chain is not one or a value is not above zero
 *
 * Source: Den Hartog, Mechanical Vibrations; the matrix in the springs' twists derived.
 */
export function torsionalModes(chain: TorsionalChain): TorsionalMode[] {
  requireTorsionalChain(chain);
  const { inertias, stiffnesses } = chain;
  const matrix = stiffnesses.map((k, i) =>
    stiffnesses.map((other, j) => {
      if (i === j) return k * (1 / inertias[i]! + 1 / inertias[i + 1]!);
      return Math.abs(i - j) === 1 ? -Math.sqrt(k * other) / inertias[Math.max(i, j)]! : 0;
    }),
  );
  const elastic = symmetricEigen(matrix).map(({ value, vector }) => {
    // Torque of each spring in the mode; a disc turns by the difference of the torques on its two sides.
    const torques = vector.map((component, i) => component * Math.sqrt(stiffnesses[i]!));
    const twists = inertias.map((inertia, i) => ((torques[i - 1] ?? 0) - (torques[i] ?? 0)) / inertia);
    const largest = twists.reduce((best, twist) => (Math.abs(twist) > Math.abs(best) ? twist : best), 0);
    return { angularFrequency: Math.sqrt(value), shape: twists.map((twist) => twist / largest) };
  });
  return [{ angularFrequency: 0, shape: inertias.map(() => 1) }, ...elastic];
}
