import { finite, notNegative, positive, requireAll } from "../check/requireAll.ts";
import { tiltRange } from "./shutValveDistance.ts";

/** Of a quarter turn of the rim; the distance is flat at its top, so it is then right to the last digits. */
const HALVINGS = 40;

/**
 * Distance of the valve head from the wall of the cylinder, for the part of the valve below the deck face.
 * Seen along the cylinder the head is an ellipse, R_v cos(alpha) across and R_v along the crankshaft, half each; its
 * point farthest from the cylinder's axis is sought on the quarter of the rim away from that axis, where there is one.
 * With the valve in the plane through the axis and little tilt that is the edge towards the wall,
 * B/2 - |x_c - L sin(alpha) + R_v cos(alpha)|. The clearance falls towards an end of any range of
 * lifts, so both ends suffice: the lift at which the edge leaves the head, and the greatest.
 * @param input.bore [m], > 0
 * @param input.centreDistance head centre from the cylinder axis, shut, in the plane of the tilt x_c [m], >= 0
 * @param input.centreAlong head centre from the cylinder axis along the crankshaft, square to that plane [m]; either sign
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
  centreAlong: number;
  valveRadius: number;
  valveTilt: number;
  lift: number;
}): number {
  const { bore, centreDistance, centreAlong, valveRadius, valveTilt, lift } = input;
  requireAll(positive, { bore, valveRadius });
  requireAll(notNegative, { centreDistance, lift });
  requireAll(finite, { centreAlong });
  requireAll(tiltRange, { valveTilt });
  const centre = Math.abs(centreDistance - lift * Math.sin(valveTilt));
  const along = Math.abs(centreAlong);
  const halfAcross = valveRadius * Math.cos(valveTilt);
  const flattening = valveRadius ** 2 - halfAcross ** 2;
  // Below zero where the square of the distance still rises along the rim; it passes zero once at most.
  const falling = (angle: number) =>
    halfAcross * centre * Math.sin(angle) -
    valveRadius * along * Math.cos(angle) -
    flattening * Math.sin(angle) * Math.cos(angle);
  let [low, high] = [0, Math.PI / 2];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (falling(middle) > 0) high = middle;
    else low = middle;
  }
  const top = (low + high) / 2;
  return bore / 2 - Math.hypot(centre + halfAcross * Math.cos(top), along + valveRadius * Math.sin(top));
}
