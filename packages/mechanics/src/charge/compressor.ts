import { notNegative, positive, requireAll, requireThat, share } from "../check/requireAll.ts";

/**
 * Pressure ratio of a compressor: the manifold pressure and what is lost on the way to it, over the pressure at
 * the compressor's inlet.
 * @param input.manifoldPressure absolute [Pa], > 0
 * @param input.ambientPressure absolute [Pa], > 0
 * @param input.inletLoss pressure lost before the compressor [Pa], >= 0 and below the ambient pressure
 * @param input.outletLoss pressure lost in cooler, pipes and throttle after it [Pa], >= 0
 * @returns ratio [-]; below 1 there is nothing to compress
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function compressorPressureRatio(input: {
  manifoldPressure: number;
  ambientPressure: number;
  inletLoss: number;
  outletLoss: number;
}): number {
  const { manifoldPressure, ambientPressure, inletLoss, outletLoss } = input;
  requireAll(positive, { manifoldPressure, ambientPressure });
  requireAll(notNegative, { inletLoss, outletLoss });
  requireThat(inletLoss < ambientPressure, "inletLoss", inletLoss, "below the ambient pressure");
  return (manifoldPressure + outletLoss) / (ambientPressure - inletLoss);
}

/** Heat capacity of air at constant pressure [J/(kg K)]. */
const AIR_HEAT_CAPACITY = 1005;

/**
 * Power that a compressor takes from its turbine or from the crankshaft, m c_p (T_2 - T_1) / eta_m.
 * @param input.airMassFlow [kg/s], >= 0
 * @param input.inletTemperature [K], > 0
 * @param input.outletTemperature [K], not below the inlet's
 * @param input.mechanicalEfficiency of its drive [-], above 0 to 1
 * @returns power [W]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals, ch. 6.
 */
export function compressorPower(input: {
  airMassFlow: number;
  inletTemperature: number;
  outletTemperature: number;
  mechanicalEfficiency: number;
}): number {
  const { airMassFlow, inletTemperature, outletTemperature, mechanicalEfficiency } = input;
  requireAll(notNegative, { airMassFlow });
  requireAll(positive, { inletTemperature, mechanicalEfficiency });
  requireAll(share, { mechanicalEfficiency });
  requireAll({ atLeast: inletTemperature }, { outletTemperature });
  return (airMassFlow * AIR_HEAT_CAPACITY * (outletTemperature - inletTemperature)) / mechanicalEfficiency;
}
