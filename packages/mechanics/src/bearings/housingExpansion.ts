import { finite, requireAll } from "../check/requireAll.ts";

/**
 * Expansion of a bearing housing across its joint when block and cap are of different metals: half the bore lies in
 * each, so their mean. Along the joint the bore follows the block, so the housing goes oval by the difference.
 * @param input.block expansion of the block [1/K]
 * @param input.cap expansion of the cap [1/K]
 * @returns expansion of the bore square to the joint [1/K]
 * @throws RangeError when a value is not finite
 *
 * Source: from memory; screening, measured or computed in full for a verdict.
 */
export function housingExpansion(input: { block: number; cap: number }): number {
  const { block, cap } = input;
  requireAll(finite, { block, cap });
  return (block + cap) / 2;
}
