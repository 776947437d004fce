import { notNegative, positive, requireAll, requireCounts } from "../check/requireAll.ts";

/**
 * Mean gas speed through the inlet valves, (B^2 / (n d^2)) S_p: as if the piston drew its charge through the
 * area of the valve heads.
 * @param input.bore [m], > 0
 * @param input.valves inlet valves of one cylinder, a whole number from 1
 * @param input.valveDiameter head diameter of one inlet valve [m], > 0
 * @param input.meanPistonSpeed [m/s], >= 0
 * @returns speed [m/s]
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function inletGasSpeed(input: {
  bore: number;
  valves: number;
  valveDiameter: number;
  meanPistonSpeed: number;
}): number {
  const { bore, valves, valveDiameter, meanPistonSpeed } = input;
  requireAll(positive, { bore, valveDiameter });
  requireAll(notNegative, { meanPistonSpeed });
  requireCounts({ valves });
  return (bore ** 2 / (valves * valveDiameter ** 2)) * meanPistonSpeed;
}
