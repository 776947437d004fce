import { notNegative, positive, requireAll } from "../check/requireAll.ts";

const drivelineShare = { atLeast: 0, below: 1 };

/**
 * Power at the crankshaft from power at the wheels, P_w / (1 - k). Adding the percentage to the wheel figure
 * gives too little.
 * @param input.wheelPower [W], >= 0
 * @param input.drivelineLoss share of the crankshaft power lost on the way [-], 0 up to 1
 * @returns power [W]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function crankPowerFromWheel(input: { wheelPower: number; drivelineLoss: number }): number {
  const { wheelPower, drivelineLoss } = input;
  requireAll(notNegative, { wheelPower });
  requireAll(drivelineShare, { drivelineLoss });
  return wheelPower / (1 - drivelineLoss);
}

/**
 * Power at the wheels from power at the crankshaft.
 * @param input.crankPower [W], >= 0
 * @param input.drivelineLoss share of the crankshaft power lost on the way [-], 0 up to 1
 * @returns power [W]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function wheelPowerFromCrank(input: { crankPower: number; drivelineLoss: number }): number {
  const { crankPower, drivelineLoss } = input;
  requireAll(notNegative, { crankPower });
  requireAll(drivelineShare, { drivelineLoss });
  return crankPower * (1 - drivelineLoss);
}

/**
 * Torque from power and speed.
 * @param input.power [W], >= 0
 * @param input.angularSpeed [rad/s], > 0
 * @returns torque [N m]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function torqueFromPower(input: { power: number; angularSpeed: number }): number {
  const { power, angularSpeed } = input;
  requireAll(notNegative, { power });
  requireAll(positive, { angularSpeed });
  return power / angularSpeed;
}

/**
 * Factor from observed to standard power of a naturally aspirated spark-ignition engine,
 * 1.18 (99 kPa / p_d) sqrt(T / T_0) - 0.18 with T_0 = 25 degC.
 * @param input.dryPressure pressure of the dry part of the air [Pa], > 0
 * @param input.temperature of the intake air [K], > 0
 * @returns factor [-], above 1 in air thinner than standard
 * @throws RangeError when a value is not above zero
 *
 * Source: SAE J1349. The standard writes (T + 273) / 298; here 298.15 K, so that 25 degC gives exactly 1.
 */
export function atmosphericCorrection(input: { dryPressure: number; temperature: number }): number {
  const { dryPressure, temperature } = input;
  requireAll(positive, { dryPressure, temperature });
  return 1.18 * (99_000 / dryPressure) * Math.sqrt(temperature / 298.15) - 0.18;
}
