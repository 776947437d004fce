import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";

/**
 * Depth of the ring pack below the crown plane: top land, grooves and lands in order down to the lower face
 * of the lowest groove.
 * @param heights each land and groove [m], > 0, at least one
 * @returns depth [m]
 * @throws RangeError when there is none or one is not above zero
 *
 * Source: plane geometry.
 */
export function ringPackDepth(heights: readonly number[]): number {
  requireThat(heights.length > 0, "heights", heights.length, "at least one land or groove");
  heights.forEach((height, i) => {
    requireAll(positive, { [`heights[${i}]`]: height });
  });
  return heights.reduce((sum, height) => sum + height, 0);
}

/**
 * Metal between the lower face of the oil ring groove and the edge of the pin bore.
 * @param input.compressionHeight pin axis to crown plane [m], > 0
 * @param input.ringPackDepth crown plane to the lower face of the oil groove [m], > 0
 * @param input.pinDiameter [m], > 0
 * @returns metal left [m], - when the pin bore cuts the groove and a support rail is needed
 * @throws RangeError when a value is not above zero
 *
 * Source: plane geometry.
 */
export function pinBoreToOilGroove(input: {
  compressionHeight: number;
  ringPackDepth: number;
  pinDiameter: number;
}): number {
  requireAll(positive, { compressionHeight: input.compressionHeight });
  return input.compressionHeight - leastCompressionHeight({ ...input, leastWall: 0 });
}

/**
 * Least compression height that carries a ring pack above the pin bore.
 * @param input.ringPackDepth crown plane to the lower face of the oil groove [m], > 0
 * @param input.pinDiameter [m], > 0
 * @param input.leastWall metal wanted between oil groove and pin bore [m], >= 0
 * @returns compression height [m]
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function leastCompressionHeight(input: {
  ringPackDepth: number;
  pinDiameter: number;
  leastWall: number;
}): number {
  const { pinDiameter, leastWall } = input;
  requireAll(positive, { ringPackDepth: input.ringPackDepth, pinDiameter });
  requireAll(notNegative, { leastWall });
  return input.ringPackDepth + leastWall + pinDiameter / 2;
}
