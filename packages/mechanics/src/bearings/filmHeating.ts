import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Temperature rise of the oil that carries off a bearing's friction, P/(rho c_p Q).
 * @param input.frictionPower [W], > 0
 * @param input.flow of oil through the bearing [m3/s], > 0
 * @param input.density [kg/m3], > 0
 * @param input.heatCapacity of the oil [J/(kg K)], > 0
 * @returns temperature rise from inlet to outlet [K]
 * @throws RangeError when a value is not above zero
 *
 * Source: heat balance; Shigley's Mechanical Engineering Design. Metal parts carry off some too: upper bound.
 */
export function oilTemperatureRise(input: {
  frictionPower: number;
  flow: number;
  density: number;
  heatCapacity: number;
}): number {
  const { frictionPower, flow, density, heatCapacity } = input;
  requireAll(positive, { frictionPower, flow, density, heatCapacity });
  return frictionPower / (density * heatCapacity * flow);
}

/** Trumpler's two constants [m] and [-]. */
const TRUMPLER_BASE = 0.0002 * 0.0254;
const TRUMPLER_SLOPE = 0.00004;

/**
 * Least film that a steadily loaded bearing should keep by Trumpler, 0.0002 in + 0.00004 D: room for roughness and
 * dirt. Engine bearings run with less at the worst moment of their cycle.
 * @param journalDiameter [m], > 0
 * @returns film [m]
 * @throws RangeError when the diameter is not above zero
 *
 * Source: P. R. Trumpler, Design of Film Bearings, as quoted in Shigley's Mechanical Engineering Design.
 */
export function trumplerFilm(journalDiameter: number): number {
  requireAll(positive, { journalDiameter });
  return TRUMPLER_BASE + TRUMPLER_SLOPE * journalDiameter;
}
