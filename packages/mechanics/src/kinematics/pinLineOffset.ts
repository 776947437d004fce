import { finite, requireAll } from "../check/requireAll.ts";

/**
 * Lateral position of the piston-pin line from the crank axis, e = e_c - delta.
 * The major thrust face lies on the -x side, so a pin offset towards it moves the line to negative x.
 * @param input.cylinderAxisOffset position e_c of the cylinder axis from the crank axis [m], + on the side
 * the crankpin moves to after top dead centre
 * @param input.pinOffset pin offset delta in the piston [m], + towards the major thrust face
 * @returns e [m], same sign as cylinderAxisOffset
 * @throws RangeError when a value is not finite
 *
 * Source: plane geometry.
 */
export function pinLineOffset(input: { cylinderAxisOffset: number; pinOffset: number }): number {
  const { cylinderAxisOffset, pinOffset } = input;
  requireAll(finite, { cylinderAxisOffset, pinOffset });
  return cylinderAxisOffset - pinOffset;
}
