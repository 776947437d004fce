import { finite, positive, requireAll } from "../check/requireAll.ts";
import { type ThermalPart, thermalGrowth } from "../stack/ThermalPart.ts";

/**
 * Diametral clearance hot of a shaft in a bore, each at its own temperature: a skirt in a cylinder, a pin in
 * a boss.
 * @param input.bore inside diameter of the outer part
 * @param input.shaft outside diameter of the inner part
 * @returns diametral clearance [m], - for interference; half of it is the radial clearance
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry, one uniform temperature per part.
 */
export function hotClearance(input: { bore: ThermalPart; shaft: ThermalPart }): number {
  const { bore, shaft } = input;
  return bore.size - shaft.size + thermalGrowth(bore) - thermalGrowth(shaft);
}

/**
 * Diametral clearance hot when both parts share one temperature and the cold clearance is known.
 * @param input.coldClearance diametral [m], - for interference
 * @param input.diameter nominal diameter [m], > 0
 * @param input.outerExpansion coefficient of linear expansion of the outer part [1/K]; behind a thin bush
 * that of the part the bush is pressed into
 * @param input.innerExpansion coefficient of linear expansion of the inner part [1/K]
 * @param input.temperatureRise of both parts [K]
 * @returns diametral clearance [m], - for interference
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function hotClearanceFromCold(input: {
  coldClearance: number;
  diameter: number;
  outerExpansion: number;
  innerExpansion: number;
  temperatureRise: number;
}): number {
  const { coldClearance, diameter, outerExpansion, innerExpansion, temperatureRise } = input;
  requireAll(finite, { coldClearance, outerExpansion, innerExpansion, temperatureRise });
  requireAll(positive, { diameter });
  return coldClearance + diameter * (outerExpansion - innerExpansion) * temperatureRise;
}
