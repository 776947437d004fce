import { DISTANCE, STEEP_X } from "../outline/SteepDistance.ts";

function write(n: Float64Array, distance: number, steep: number): void {
  n[DISTANCE] = distance;
  n[STEEP_X] = steep;
}

/**
 * Signed distance across, at the rod's side face, to the bore's wall beside a notch: the metal at
 * z >= half the notch width outside the circle of the bore. From a face inside the notch the nearest
 * metal is the circle straight out, if that foot lies beside the notch; else the corner where the
 * circle meets the notch's side; else that side, straight along the crank.
 * @param n where distance [m] and its slope by the way across [-] are written
 * @param across way from the cylinder axis [m], >= 0
 * @param radius of the bore [m], > face
 * @param face of the rod from the cylinder axis, along the crank [m], > 0
 * @param halfWidth of the notch [m], > 0
 *
 * Source: plane geometry.
 */
export function writeAcrossBesideNotch(
  n: Float64Array,
  across: number,
  radius: number,
  face: number,
  halfWidth: number,
): void {
  const fromAxis = Math.sqrt(across * across + face * face);
  const toCircle = radius - fromAxis;
  const beyond = halfWidth - face;
  if (beyond <= 0 && beyond > toCircle) write(n, beyond, 0);
  else if (beyond <= 0 || face * radius >= halfWidth * fromAxis) write(n, toCircle, -across / fromAxis);
  else {
    const corner = Math.sqrt(Math.max(0, radius * radius - halfWidth * halfWidth));
    const toCorner = Math.max(0, corner - across);
    const way = Math.sqrt(toCorner * toCorner + beyond * beyond);
    write(n, way, -toCorner / way);
  }
}
