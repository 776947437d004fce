import { positive, requireAll } from "../check/requireAll.ts";
import { inletGasSpeed } from "./inletGasSpeed.ts";

/**
 * Inlet Mach index, (B^2 / (n d^2)) S_p / (C_i a). Breathing falls off above about 0.6 (0.5 in other texts).
 * @param input.bore [m], > 0
 * @param input.valves inlet valves of one cylinder, a whole number from 1
 * @param input.valveDiameter head diameter of one inlet valve [m], > 0
 * @param input.meanPistonSpeed [m/s], >= 0
 * @param input.flowCoefficient mean over the valve's opening, by valve head area [-], > 0
 * @param input.speedOfSound in the intake [m/s], > 0
 * @returns Mach index [-]
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function inletMachIndex(input: {
  bore: number;
  valves: number;
  valveDiameter: number;
  meanPistonSpeed: number;
  flowCoefficient: number;
  speedOfSound: number;
}): number {
  const { flowCoefficient, speedOfSound } = input;
  requireAll(positive, { flowCoefficient, speedOfSound });
  return inletGasSpeed(input) / (flowCoefficient * speedOfSound);
}
