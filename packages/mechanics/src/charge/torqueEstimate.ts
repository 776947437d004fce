import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";
import { greatestBetween } from "../kinematics/greatestOverTurn.ts";
import { frictionBySpeed } from "./frictionMeanEffectivePressure.ts";

/** An engine at full throttle of which only the power at one speed is known, and how its filling is taken to go. */
export interface EstimatedEngine {
  /** at the speed of the known power [Pa], >= 0 */
  readonly brakeMeanEffectivePressure: number;
  /** crankshaft speed of the known power [rad/s], > 0 */
  readonly powerSpeed: number;
  /** of all cylinders [m3], > 0 */
  readonly displacement: number;
  /** speed at which the cylinders fill best, over the speed of the known power [-], > 0 */
  readonly bestShare: number;
  /** what a speed of twice that, or none, loses of the best filling [-], 0 or more */
  readonly fall: number;
}

/**
 * How well the cylinders fill against their best, 1 - fall (n/n_b - 1)^2: a parabola about the best speed.
 * @param input.speedShare speed over the speed of the known power [-], >= 0
 * @param input.bestShare speed of the best filling over the same [-], > 0
 * @param input.fall what twice the best speed, or none, loses [-], >= 0
 * @returns share of the best filling [-]
 * @throws RangeError when a value is out of range, or so far off that nothing would flow
 *
 * Source: common practice: a shape taken for granted, not a law.
 */
export function fillingShape(input: { speedShare: number; bestShare: number; fall: number }): number {
  const { speedShare, bestShare, fall } = input;
  requireAll(notNegative, { speedShare, fall });
  requireAll(positive, { bestShare });
  const shape = 1 - fall * (speedShare / bestShare - 1) ** 2;
  requireThat(shape > 0, "speedShare", speedShare, "nearer to the speed of the best filling");
  return shape;
}

/**
 * Torque at a speed, estimated from the power at one: the gas gives what the filling lets it, and friction by speed
 * comes off. At the speed of the known power it is exact.
 * @param input the engine
 * @param input.angularSpeed crankshaft speed [rad/s], > 0
 * @returns torque [N m]; - where friction takes more than the gas gives
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals, eq. 13.6 for friction; the filling's shape is common
 * practice.
 */
export function torqueEstimate(input: EstimatedEngine & { readonly angularSpeed: number }): number {
  const { brakeMeanEffectivePressure, powerSpeed, displacement, angularSpeed } = input;
  requireAll(positive, { powerSpeed, displacement, angularSpeed });
  requireAll(notNegative, { brakeMeanEffectivePressure });
  const shapeAt = (speedShare: number) => fillingShape({ ...input, speedShare });
  const indicated = brakeMeanEffectivePressure + frictionBySpeed(powerSpeed);
  const gas = (indicated * shapeAt(angularSpeed / powerSpeed)) / shapeAt(1);
  return ((gas - frictionBySpeed(angularSpeed)) * displacement) / (4 * Math.PI);
}

/** Cells of the search: torque against speed has one top. */
const CELLS = 24;

/**
 * Greatest torque of the estimate over a range of speeds.
 * @param input the engine
 * @param input.lowest speed [rad/s], > 0
 * @param input.highest speed [rad/s], above the lowest
 * @returns torque [N m] and the crankshaft speed there [rad/s]
 * @throws RangeError when a value is out of range
 *
 * Source: {@link torqueEstimate}.
 */
export function greatestTorqueEstimate(
  input: EstimatedEngine & { readonly lowest: number; readonly highest: number },
): { torque: number; angularSpeed: number } {
  const { lowest, highest } = input;
  requireAll(positive, { lowest });
  requireAll({ above: lowest }, { highest });
  const { value, at } = greatestBetween(
    (angularSpeed) => torqueEstimate({ ...input, angularSpeed }),
    lowest,
    highest,
    CELLS,
  );
  return { torque: value, angularSpeed: at };
}
