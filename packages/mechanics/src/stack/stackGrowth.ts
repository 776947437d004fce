import { type ThermalPart, thermalGrowth } from "./ThermalPart.ts";

/**
 * Thermal change of the deck clearance: the block's growth less that of throw, rod and piston.
 * @param input.block deck height
 * @param input.crankThrow throw radius
 * @param input.rod rod length
 * @param input.piston compression height
 * @returns change of the deck clearance [m], + moves the crown down from the deck
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry, one uniform temperature per part.
 */
export function stackGrowth(input: {
  block: ThermalPart;
  crankThrow: ThermalPart;
  rod: ThermalPart;
  piston: ThermalPart;
}): number {
  const { block, crankThrow, rod, piston } = input;
  return thermalGrowth(block) - (thermalGrowth(crankThrow) + thermalGrowth(rod) + thermalGrowth(piston));
}
