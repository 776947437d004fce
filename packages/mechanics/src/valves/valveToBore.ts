import { notNegative, positive, requireAll } from "../check/requireAll.ts";
import { tiltRange } from "./shutValveDistance.ts";

/**
 * Distance of the valve head from the wall of the cylinder, for the part of the valve below the deck face.
 * Seen along the cylinder the head is an ellipse; its point farthest from the cylinder's axis is the edge
 * towards the wall, B/2 - |x_c - L sin(alpha) + R_v cos(alpha)|, unless the valve is steep and central, when
 * two points to either side of that edge stand farther out. The clearance falls towards an end of any range of
 * lifts, so both ends suffice: the lift at which the edge leaves the head, and the greatest.
 * @param input.bore [m], > 0
 * @param input.centreDistance head centre from the cylinder axis, shut, in the plane of the tilt x_c [m], >= 0
 * @param input.valveRadius R_v [m], > 0
 * @param input.valveTilt alpha [rad], within a quarter turn; + when opening carries the head towards the axis
 * @param input.lift L [m], >= 0
 * @returns clearance [m], - when the valve meets the wall
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function valveToBore(input: {
  bore: number;
  centreDistance: number;
  valveRadius: number;
  valveTilt: number;
  lift: number;
}): number {
  const { bore, centreDistance, valveRadius, valveTilt, lift } = input;
  requireAll(positive, { bore, valveRadius });
  requireAll(notNegative, { centreDistance, lift });
  requireAll(tiltRange, { valveTilt });
  const centre = Math.abs(centreDistance - lift * Math.sin(valveTilt));
  const halfAcross = valveRadius * Math.cos(valveTilt);
  // Square of the distance over the rim is a parabola in the cosine of the rim's angle, highest at `peak`.
  const flattening = (valveRadius * Math.sin(valveTilt)) ** 2;
  const peak = flattening === 0 ? 1 : Math.min(1, (centre * halfAcross) / flattening);
  const farthest = Math.hypot(centre + halfAcross * peak, valveRadius * Math.sqrt(1 - peak ** 2));
  return bore / 2 - farthest;
}
