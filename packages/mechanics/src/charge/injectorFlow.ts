import { notNegative, positive, requireAll, requireCounts } from "../check/requireAll.ts";

/**
 * Static flow of an injector at another pressure: it grows with the root of the pressure across it.
 * @param input.ratedFlow flow at the rated pressure [kg/s], > 0
 * @param input.ratedPressure pressure across the injector at which it was rated [Pa], > 0
 * @param input.pressure across the injector in the engine [Pa], > 0
 * @returns flow [kg/s]
 * @throws RangeError when a value is not above zero
 *
 * Source: orifice flow; common practice.
 */
export function injectorFlowAt(input: {
  ratedFlow: number;
  ratedPressure: number;
  pressure: number;
}): number {
  const { ratedFlow, ratedPressure, pressure } = input;
  requireAll(positive, { ratedFlow, ratedPressure, pressure });
  return ratedFlow * Math.sqrt(pressure / ratedPressure);
}

/**
 * Static flow that each injector must have.
 * @param input.fuelFlow of the whole engine [kg/s], >= 0
 * @param input.injectors number of injectors, a whole number from 1
 * @param input.duty greatest share of the time that they may be open [-], above 0 to 1
 * @returns flow of one [kg/s]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function injectorFlowNeeded(input: { fuelFlow: number; injectors: number; duty: number }): number {
  const { fuelFlow, injectors, duty } = input;
  requireAll(notNegative, { fuelFlow });
  requireCounts({ injectors });
  requireAll({ above: 0, atMost: 1 }, { duty });
  return fuelFlow / (injectors * duty);
}
