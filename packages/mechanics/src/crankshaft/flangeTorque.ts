import { notNegative, positive, requireAll, requireCounts } from "../check/requireAll.ts";

/**
 * Torque a bolted flange (flywheel, damper hub) carries by friction alone; dowels are a reserve, not counted.
 * @param input.bolts number of bolts, a whole number from 1
 * @param input.preload of one bolt, the least of its scatter [N], >= 0
 * @param input.friction between the faces, dry and clean [-], >= 0
 * @param input.boltCircleRadius [m], > 0
 * @returns torque [N m]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1.
 */
export function flangeTorque(input: {
  bolts: number;
  preload: number;
  friction: number;
  boltCircleRadius: number;
}): number {
  const { bolts, preload, friction, boltCircleRadius } = input;
  requireCounts({ bolts });
  requireAll(notNegative, { preload, friction });
  requireAll(positive, { boltCircleRadius });
  return bolts * preload * friction * boltCircleRadius;
}
