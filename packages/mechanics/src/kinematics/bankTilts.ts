import { requireAll } from "../check/requireAll.ts";

/**
 * How far the cylinder axes lean from the middle plane of the block: nothing in a single row, half the bank
 * angle either way with two banks.
 * @param bankAngle between the banks [rad], 0 for one row, up to half a turn for banks opposed
 * @returns the tilts [rad], + with the rotation of the crankshaft
 * @throws RangeError when the angle is out of range
 *
 * Source: plane geometry.
 */
export function bankTilts(bankAngle: number): readonly number[] {
  requireAll({ atLeast: 0, atMost: Math.PI }, { bankAngle });
  return bankAngle === 0 ? [0] : [bankAngle / 2, -bankAngle / 2];
}

/** A point of the plane that the rod swings in [m], from the crank axis. */
interface PlanePoint {
  readonly x: number;
  readonly y: number;
}

/**
 * A point given in one upright frame, in a frame that leans from it: both have their origin on the crank axis,
 * y upwards and x towards the side that the crankpin moves to after its top.
 * @param point in the upright frame [m]
 * @param tilt of the leaning frame [rad], + with the rotation of the crankshaft
 * @returns the point in the leaning frame [m]
 * @throws never: any point and tilt will do
 *
 * Source: plane geometry.
 */
export function inLeaningFrame({ x, y }: PlanePoint, tilt: number): PlanePoint {
  const [sin, cos] = [Math.sin(tilt), Math.cos(tilt)];
  return { x: x * cos - y * sin, y: x * sin + y * cos };
}
