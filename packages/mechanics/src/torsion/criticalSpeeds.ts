import { positive, requireAll, requireCounts, requireThat } from "../check/requireAll.ts";

/** A crankshaft speed at which one order of the gas and inertia torque meets a natural frequency. */
export interface CriticalSpeed {
  /** excitations per turn of the crankshaft k [-] */
  readonly order: number;
  /** crankshaft speed [rad/s] */
  readonly angularSpeed: number;
  /** all cylinders excite in step: the order is a multiple of half the number of cylinders */
  readonly major: boolean;
}

/**
 * Critical speeds of a four-stroke engine by order, omega_k = omega_1 / k, k = 0.5, 1, 1.5 ... The majors hold
 * for even firing; with uneven firing other orders can be as strong.
 * @param input.angularFrequency of the mode [rad/s], > 0
 * @param input.cylinders number of cylinders, a whole number from 1
 * @param input.greatestOrder last order wanted [-], a multiple of 0.5 from 0.5 to 1000
 * @returns one speed for each order, the fastest first
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function criticalSpeeds(input: {
  angularFrequency: number;
  cylinders: number;
  greatestOrder: number;
}): CriticalSpeed[] {
  const { angularFrequency, cylinders, greatestOrder } = input;
  requireAll(positive, { angularFrequency });
  requireCounts({ cylinders });
  const count = 2 * greatestOrder;
  requireThat(
    Number.isInteger(count) && count >= 1 && count <= 2000,
    "greatestOrder",
    greatestOrder,
    "a multiple of 0.5 from 0.5 to 1000",
  );
  return Array.from({ length: count }, (_, i) => {
    const halves = i + 1;
    const order = halves / 2;
    return { order, angularSpeed: angularFrequency / order, major: halves % cylinders === 0 };
  });
}

/**
 * Critical speeds that lie in a range of speeds, majors and minors: those that the engine passes or stays at.
 * @param input.angularFrequency of the mode [rad/s], > 0
 * @param input.cylinders number of cylinders, a whole number from 1
 * @param input.greatestOrder last order wanted [-], a multiple of 0.5 from 0.5 to 1000
 * @param input.lowest speed of the crankshaft that counts [rad/s], > 0
 * @param input.highest speed that counts [rad/s], >= lowest
 * @returns those from lowest to highest, both ends included, the slowest first; empty when there is none
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, as {@link criticalSpeeds}.
 */
export function criticalsWithin(input: {
  angularFrequency: number;
  cylinders: number;
  greatestOrder: number;
  lowest: number;
  highest: number;
}): CriticalSpeed[] {
  const { lowest, highest } = input;
  requireAll(positive, { lowest });
  requireAll({ atLeast: lowest }, { highest });
  return criticalSpeeds(input)
    .filter(({ angularSpeed }) => angularSpeed >= lowest && angularSpeed <= highest)
    .reverse();
}
