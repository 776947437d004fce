import { notNegative, requireAll } from "../check/requireAll.ts";
import { requireTorsionalChain, type TorsionalChain } from "./TorsionalChain.ts";

/**
 * Holzer's table: the chain is driven at one frequency with the first disc turning by 1 rad, and the torque
 * left over at the far end is what an outside agent would have to supply. It is zero at a natural frequency.
 * @param input.chain discs and springs, free at both ends
 * @param input.angularFrequency [rad/s], >= 0
 * @returns torque left over [N m] for 1 rad at the first disc, and the twist of each disc [rad]
 * @throws RangeError when the chain is not one or a value is out of range
 *
 * Source: Den Hartog, Mechanical Vibrations.
 */
export function holzerResidual(input: { chain: TorsionalChain; angularFrequency: number }): {
  torque: number;
  twists: readonly number[];
} {
  const { chain, angularFrequency } = input;
  requireTorsionalChain(chain);
  requireAll(notNegative, { angularFrequency });
  let twist = 1;
  let torque = 0;
  const twists = chain.inertias.map((inertia, i) => {
    const before = chain.stiffnesses[i - 1];
    if (before !== undefined) twist -= torque / before;
    torque += inertia * angularFrequency ** 2 * twist;
    return twist;
  });
  return { torque, twists };
}
