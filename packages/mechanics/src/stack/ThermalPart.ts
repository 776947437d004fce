import { finite, positive, requireAll } from "../check/requireAll.ts";

/** One dimension of one part and how it warms up, at one uniform temperature. */
export interface ThermalPart {
  /** dimension cold [m], > 0: a length, a height or a diameter */
  readonly size: number;
  /** coefficient of linear expansion [1/K] */
  readonly expansion: number;
  /** temperature above the cold state [K], either sign */
  readonly temperatureRise: number;
}

/**
 * Growth of a dimension with temperature, size x expansion x temperature rise.
 * @param part the dimension, its expansion [1/K] and its temperature rise [K]
 * @returns growth [m], - when it cools
 * @throws RangeError when a value is out of range
 *
 * Source: definition of the coefficient of linear expansion.
 */
export function thermalGrowth({ size, expansion, temperatureRise }: ThermalPart): number {
  requireAll(positive, { size });
  requireAll(finite, { expansion, temperatureRise });
  return size * expansion * temperatureRise;
}
