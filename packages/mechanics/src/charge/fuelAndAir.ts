import { notNegative, positive, requireAll, requireCounts } from "../check/requireAll.ts";

/**
 * Fuel flow for a power.
 * @param input.power at the crankshaft [W], >= 0
 * @param input.specificFuelConsumption brake specific [kg/J], > 0; 1 g/kWh is 1 / 3.6e9 kg/J
 * @returns fuel mass flow [kg/s]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function fuelFlow(input: { power: number; specificFuelConsumption: number }): number {
  const { power, specificFuelConsumption } = input;
  requireAll(notNegative, { power });
  requireAll(positive, { specificFuelConsumption });
  return power * specificFuelConsumption;
}

/**
 * Air flow for a power: fuel flow times air-fuel ratio.
 * @param input.power at the crankshaft [W], >= 0
 * @param input.specificFuelConsumption brake specific [kg/J], > 0
 * @param input.airFuelRatio by mass [-], > 0
 * @returns air mass flow [kg/s]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals.
 */
export function airMassFlow(input: {
  power: number;
  specificFuelConsumption: number;
  airFuelRatio: number;
}): number {
  requireAll(positive, { airFuelRatio: input.airFuelRatio });
  return fuelFlow(input) * input.airFuelRatio;
}

/**
 * Volume flow of a mass flow at a given density.
 * @param input.massFlow [kg/s], >= 0
 * @param input.density at the place where the volume is wanted [kg/m3], > 0
 * @returns volume flow [m3/s]
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function volumeFlow(input: { massFlow: number; density: number }): number {
  const { massFlow, density } = input;
  requireAll(notNegative, { massFlow });
  requireAll(positive, { density });
  return massFlow / density;
}

/**
 * Injector duty: fuel wanted over the flow of all injectors held open.
 * @param input.fuelFlow of the whole engine [kg/s], >= 0
 * @param input.injectors number of injectors, a whole number from 1
 * @param input.injectorFlow static flow of one at the rail pressure used [kg/s], > 0
 * @returns duty [-]; above 1 the fuel is not to be had
 * @throws RangeError when a value is out of range
 *
 * Source: definition.
 */
export function injectorDuty(input: { fuelFlow: number; injectors: number; injectorFlow: number }): number {
  const { injectors, injectorFlow } = input;
  requireAll(notNegative, { fuelFlow: input.fuelFlow });
  requireCounts({ injectors });
  requireAll(positive, { injectorFlow });
  return input.fuelFlow / (injectors * injectorFlow);
}
