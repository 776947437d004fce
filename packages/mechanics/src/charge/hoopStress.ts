import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/**
 * Hoop stress of a thin cylinder wall, p B / (2 t), where nothing supports it from outside.
 * @param input.pressure gauge, at its peak [Pa], >= 0
 * @param input.bore inside diameter [m], > 0
 * @param input.wall thickness, the least measured [m], > 0; thin means below about a tenth of the bore
 * @returns mean hoop stress [Pa], + tension
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design.
 */
export function hoopStress(input: { pressure: number; bore: number; wall: number }): number {
  const { pressure, bore, wall } = input;
  requireAll(notNegative, { pressure });
  requireAll(positive, { bore, wall });
  return (pressure * bore) / (2 * wall);
}

/**
 * Hoop stress at the bore of a thick cylinder under inside pressure, p (b^2 + a^2) / (b^2 - a^2): the
 * greatest in the wall, always above the thin-wall mean.
 * @param input.pressure gauge, at its peak [Pa], >= 0
 * @param input.bore inside diameter [m], > 0
 * @param input.wall thickness [m], > 0
 * @returns hoop stress [Pa], + tension
 * @throws RangeError when a value is out of range
 *
 * Source: Lame.
 */
export function thickCylinderHoopStress(input: { pressure: number; bore: number; wall: number }): number {
  const { pressure, bore, wall } = input;
  requireAll(notNegative, { pressure });
  requireAll(positive, { bore, wall });
  const outer = bore + 2 * wall;
  return (pressure * (outer ** 2 + bore ** 2)) / (outer ** 2 - bore ** 2);
}
