import { positive, requireAll } from "../check/requireAll.ts";

/** Standard air of both standards: 99 kPa dry, 25 degrees Celsius. */
const DRY_PRESSURE = 99_000;
const TEMPERATURE = 298.15;

/** Air that an engine breathes. */
export interface IntakeAir {
  /** pressure of the dry part of the air [Pa], > 0 */
  readonly dryPressure: number;
  /** [K], > 0 */
  readonly temperature: number;
}

/**
 * Factor from observed to standard power of a naturally aspirated spark-ignition engine,
 * 1.18 (99 kPa / p_d) sqrt(T / T_0) - 0.18 with T_0 = 25 degC.
 * @param air what it breathes
 * @returns factor [-], above 1 in air thinner than standard
 * @throws RangeError when a value is not above zero
 *
 * Source: SAE J1349. The standard writes (T + 273) / 298; here 298.15 K, so that 25 degC gives exactly 1.
 */
export function atmosphericCorrection(air: IntakeAir): number {
  const { dryPressure, temperature } = air;
  requireAll(positive, { dryPressure, temperature });
  return 1.18 * (DRY_PRESSURE / dryPressure) * Math.sqrt(temperature / TEMPERATURE) - 0.18;
}

/**
 * The same by the other standard, (99 kPa / p_d)^1.2 (T / T_0)^0.6 with T_0 = 25 degC; to be used from 0.93 to 1.07.
 * @param air what it breathes
 * @returns factor [-], above 1 in air thinner than standard
 * @throws RangeError when a value is not above zero
 *
 * Source: ISO 1585, spark-ignition engines (exponents from memory).
 */
export function atmosphericCorrectionIso(air: IntakeAir): number {
  const { dryPressure, temperature } = air;
  requireAll(positive, { dryPressure, temperature });
  return (DRY_PRESSURE / dryPressure) ** 1.2 * (temperature / TEMPERATURE) ** 0.6;
}
