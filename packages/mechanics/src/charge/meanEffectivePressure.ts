import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/** An engine turning at a speed. */
export interface RunningEngine {
  /** displacement of the whole engine [m3], > 0 */
  readonly displacement: number;
  /** crankshaft speed [rad/s], > 0 */
  readonly angularSpeed: number;
  /** turns per working cycle [-], > 0: 2 for a four-stroke, 1 for a two-stroke */
  readonly revolutionsPerCycle: number;
}

/**
 * Volume swept by working cycles each second, V n / turns of a cycle.
 * @param engine displacement [m3], angular speed [rad/s] and turns of a cycle [-], all > 0
 * @returns volume flow [m3/s]
 * @throws RangeError when a value is not above zero
 *
 * Source: definition.
 */
export function sweptPerSecond({ displacement, angularSpeed, revolutionsPerCycle }: RunningEngine): number {
  requireAll(positive, { displacement, angularSpeed, revolutionsPerCycle });
  return (displacement * angularSpeed) / (2 * Math.PI * revolutionsPerCycle);
}

/**
 * Brake mean effective pressure: power at the crankshaft over the volume swept by working cycles per second.
 * @param input.power at the crankshaft [W], >= 0
 * @param input the engine as in {@link RunningEngine}
 * @returns pressure [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals.
 */
export function brakeMeanEffectivePressure(input: RunningEngine & { readonly power: number }): number {
  requireAll(notNegative, { power: input.power });
  return input.power / sweptPerSecond(input);
}

/**
 * Power from a mean effective pressure; the inverse of {@link brakeMeanEffectivePressure}.
 * @param input.meanEffectivePressure [Pa], >= 0
 * @param input the engine as in {@link RunningEngine}
 * @returns power [W]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals.
 */
export function powerFromMeanEffectivePressure(
  input: RunningEngine & { readonly meanEffectivePressure: number },
): number {
  requireAll(notNegative, { meanEffectivePressure: input.meanEffectivePressure });
  return input.meanEffectivePressure * sweptPerSecond(input);
}

/**
 * Brake mean effective pressure from torque, 2 pi T over the volume swept in a turn: the speed falls out.
 * @param input.torque at the crankshaft [N m], >= 0
 * @param input.displacement of the whole engine [m3], > 0
 * @param input.revolutionsPerCycle turns per working cycle [-], > 0: 2 for a four-stroke, 1 for a two-stroke
 * @returns pressure [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals.
 */
export function meanEffectivePressureFromTorque(input: {
  torque: number;
  displacement: number;
  revolutionsPerCycle: number;
}): number {
  requireAll(notNegative, { torque: input.torque });
  const angularSpeed = 1;
  return brakeMeanEffectivePressure({ ...input, power: input.torque * angularSpeed, angularSpeed });
}

/** Specific gas constant of dry air [J/(kg K)]. */
const AIR_GAS_CONSTANT = 287.05;

/**
 * Density of dry air as an ideal gas.
 * @param input.pressure absolute [Pa], > 0
 * @param input.temperature [K], > 0
 * @returns density [kg/m3]
 * @throws RangeError when a value is not above zero
 *
 * Source: ideal gas; Heywood, Internal Combustion Engine Fundamentals.
 */
export function airDensity(input: { pressure: number; temperature: number }): number {
  const { pressure, temperature } = input;
  requireAll(positive, { pressure, temperature });
  return pressure / (AIR_GAS_CONSTANT * temperature);
}

/**
 * Manifold pressure at which the engine breathes a wanted air flow.
 * @param input.airMassFlow [kg/s], >= 0
 * @param input.temperature of the charge in the manifold [K], > 0
 * @param input.volumetricEfficiency by manifold density [-], > 0
 * @param input the engine as in {@link RunningEngine}
 * @returns absolute pressure [Pa]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals.
 */
export function manifoldPressureNeeded(
  input: RunningEngine & {
    readonly airMassFlow: number;
    readonly temperature: number;
    readonly volumetricEfficiency: number;
  },
): number {
  const { airMassFlow, temperature, volumetricEfficiency } = input;
  requireAll(notNegative, { airMassFlow });
  requireAll(positive, { temperature, volumetricEfficiency });
  const density = airMassFlow / (volumetricEfficiency * sweptPerSecond(input));
  return density * AIR_GAS_CONSTANT * temperature;
}

/**
 * Speed of sound in air, sqrt(1.4 R T).
 * @param temperature [K], > 0
 * @returns speed [m/s]
 * @throws RangeError when the temperature is not above zero
 *
 * Source: ideal gas; Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function speedOfSound(temperature: number): number {
  requireAll(positive, { temperature });
  return Math.sqrt(1.4 * AIR_GAS_CONSTANT * temperature);
}
