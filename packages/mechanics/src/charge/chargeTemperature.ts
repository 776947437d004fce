import { positive, requireAll, share } from "../check/requireAll.ts";

/**
 * Temperature behind a compressor, T_1 (1 + (Pi^((g - 1) / g) - 1) / eta).
 * @param input.inletTemperature before the compressor [K], > 0
 * @param input.pressureRatio outlet over inlet, absolute [-], >= 1
 * @param input.efficiency isentropic [-], above 0 to 1
 * @param input.heatCapacityRatio g of the gas [-], > 1; 1.4 for air
 * @returns temperature [K]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals.
 */
export function compressorOutletTemperature(input: {
  inletTemperature: number;
  pressureRatio: number;
  efficiency: number;
  heatCapacityRatio: number;
}): number {
  const { inletTemperature, pressureRatio, efficiency, heatCapacityRatio } = input;
  requireAll(positive, { inletTemperature });
  requireAll({ atLeast: 1 }, { pressureRatio });
  requireAll({ above: 0, atMost: 1 }, { efficiency });
  requireAll({ above: 1 }, { heatCapacityRatio });
  const isentropicRise = pressureRatio ** ((heatCapacityRatio - 1) / heatCapacityRatio) - 1;
  return inletTemperature * (1 + isentropicRise / efficiency);
}

/**
 * Temperature behind a charge cooler, T_2 - eps (T_2 - T_coolant).
 * @param input.inletTemperature before the cooler [K], > 0
 * @param input.effectiveness [-], 0 to 1
 * @param input.coolantTemperature of the air or water that cools [K], > 0
 * @returns temperature [K]
 * @throws RangeError when a value is out of range
 *
 * Source: definition of the effectiveness.
 */
export function chargeCoolerOutlet(input: {
  inletTemperature: number;
  effectiveness: number;
  coolantTemperature: number;
}): number {
  const { inletTemperature, effectiveness, coolantTemperature } = input;
  requireAll(positive, { inletTemperature, coolantTemperature });
  requireAll(share, { effectiveness });
  return inletTemperature - effectiveness * (inletTemperature - coolantTemperature);
}
