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
