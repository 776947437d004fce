import { finite, positive, requireAll, requireThat } from "../check/requireAll.ts";

/**
 * Inertia a mode shows at one disc: the single disc there that would hold the same kinetic energy as the whole
 * chain, sum of J_i (q_i / q_disc)^2.
 * @param input.inertias of the discs [kg m2], each > 0
 * @param input.shape twist of each disc in the mode [-], any scale
 * @param input.disc index of the disc, 0 for the first; it must turn in the mode
 * @returns modal inertia [kg m2]
 * @throws RangeError when the lists differ in length, a value is out of range or the disc is a node
 *
 * Source: Den Hartog, Mechanical Vibrations.
 */
export function modalInertia(input: {
  inertias: readonly number[];
  shape: readonly number[];
  disc: number;
}): number {
  const { inertias, shape, disc } = input;
  requireThat(shape.length === inertias.length, "shape", shape.length, `${inertias.length} twists`);
  requireThat(
    Number.isInteger(disc) && disc >= 0 && disc < inertias.length,
    "disc",
    disc,
    `a whole number from 0 to ${inertias.length - 1}`,
  );
  const energy = inertias.reduce((sum, inertia, i) => {
    requireAll(positive, { [`inertias[${i}]`]: inertia });
    requireAll(finite, { [`shape[${i}]`]: shape[i]! });
    return sum + inertia * shape[i]! ** 2;
  }, 0);
  requireThat(shape[disc] !== 0, `shape[${disc}]`, shape[disc]!, "a disc that turns in the mode");
  return energy / shape[disc]! ** 2;
}
