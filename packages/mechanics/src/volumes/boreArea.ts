import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Area of the bore (or of any full circle), pi B^2 / 4.
 * @param bore finished diameter [m], > 0
 * @returns area [m2]
 * @throws RangeError when the diameter is not above zero
 *
 * Source: definition.
 */
export function boreArea(bore: number): number {
  requireAll(positive, { bore });
  return (Math.PI / 4) * bore ** 2;
}
