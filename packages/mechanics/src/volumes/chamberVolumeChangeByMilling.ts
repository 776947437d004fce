import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Change of chamber volume when the head face is milled.
 * @param input.faceArea area of the chamber opening in the head face [m2], > 0
 * @param input.milledDepth depth taken off [m], >= 0
 * @returns change [m3], <= 0; holds while the chamber walls stand square to the face over that depth
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function chamberVolumeChangeByMilling(input: { faceArea: number; milledDepth: number }): number {
  const { faceArea, milledDepth } = input;
  requireAll(positive, { faceArea });
  requireAll(notNegative, { milledDepth });
  return -faceArea * milledDepth;
}
