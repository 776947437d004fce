import { positive, requireAll, requireThat } from "../check/requireAll.ts";

/**
 * A crankshaft as rigid discs joined by massless springs, free at both ends: damper hub, throws, flywheel. A
 * geared or branched shaft is no chain of this kind.
 */
export interface TorsionalChain {
  /** moments of inertia about the shaft axis [kg m2], each > 0, from the front end, at least two */
  readonly inertias: readonly number[];
  /** torsional stiffness between neighbouring discs [N m/rad], each > 0, one fewer than the discs */
  readonly stiffnesses: readonly number[];
}

/**
 * Checks that discs and springs make a chain.
 * @param chain the discs and springs
 * @throws RangeError when there are fewer than two discs, the numbers of discs and springs do not fit, or a
 * value is not above zero
 *
 * Source: definition.
 */
export function requireTorsionalChain({ inertias, stiffnesses }: TorsionalChain): void {
  requireThat(inertias.length >= 2, "inertias", inertias.length, "at least two discs");
  requireThat(
    stiffnesses.length === inertias.length - 1,
    "stiffnesses",
    stiffnesses.length,
    `one fewer than the ${inertias.length} discs`,
  );
  inertias.forEach((inertia, i) => {
    requireAll(positive, { [`inertias[${i}]`]: inertia });
  });
  stiffnesses.forEach((stiffness, i) => {
    requireAll(positive, { [`stiffnesses[${i}]`]: stiffness });
  });
}
