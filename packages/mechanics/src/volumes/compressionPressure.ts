import { positive, requireAll } from "../check/requireAll.ts";

/**
 * Pressure at the end of compression, p (trapped ratio)^n.
 * @param input.inletPressure absolute pressure at inlet closing [Pa], > 0
 * @param input.trappedCompressionRatio [-], > 1
 * @param input.polytropicExponent n [-], > 1; 1.28-1.35 for a running engine
 * @returns absolute pressure [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals.
 */
export function compressionPressure(input: {
  inletPressure: number;
  trappedCompressionRatio: number;
  polytropicExponent: number;
}): number {
  const { inletPressure, trappedCompressionRatio, polytropicExponent } = input;
  requireAll(positive, { inletPressure });
  requireAll({ above: 1 }, { trappedCompressionRatio, polytropicExponent });
  return inletPressure * trappedCompressionRatio ** polytropicExponent;
}

/**
 * Temperature at the end of compression, T (trapped ratio)^(n - 1).
 * @param input.inletTemperature charge temperature at inlet closing [K], > 0
 * @param input.trappedCompressionRatio [-], > 1
 * @param input.polytropicExponent n [-], > 1
 * @returns temperature [K]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals.
 */
export function compressionTemperature(input: {
  inletTemperature: number;
  trappedCompressionRatio: number;
  polytropicExponent: number;
}): number {
  const { inletTemperature, trappedCompressionRatio, polytropicExponent } = input;
  requireAll(positive, { inletTemperature });
  requireAll({ above: 1 }, { trappedCompressionRatio, polytropicExponent });
  return inletTemperature * trappedCompressionRatio ** (polytropicExponent - 1);
}

/**
 * Cranking pressure a gauge would show, warm and with an open throttle. Leakage, the gauge's own volume and
 * the cranking speed move it by about a tenth.
 * @param input.ambientPressure absolute [Pa], > 0
 * @param input.trappedCompressionRatio [-], > 1
 * @param input.polytropicExponent n [-], > 1; 1.2-1.3 at cranking speed
 * @returns gauge pressure [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: common practice.
 */
export function crankingPressure(input: {
  ambientPressure: number;
  trappedCompressionRatio: number;
  polytropicExponent: number;
}): number {
  requireAll(positive, { ambientPressure: input.ambientPressure });
  return compressionPressure({ ...input, inletPressure: input.ambientPressure }) - input.ambientPressure;
}
