import { positive, requireAll, requireThat, share } from "../check/requireAll.ts";

const DRY_AIR_CONSTANT = 287.05;
const VAPOUR_CONSTANT = 461.5;
const CELSIUS = 273.15;

/** Ambient air. */
export interface AmbientAir {
  /** absolute [Pa], > 0 */
  readonly pressure: number;
  /** [K], 233 to 333 */
  readonly temperature: number;
  /** relative humidity [-], 0 to 1 */
  readonly humidity: number;
}

/**
 * Pressure of water vapour that air holds when saturated, 610.94 Pa exp(17.625 t / (t + 243.04)), t in degrees
 * Celsius.
 * @param temperature [K], 233 to 333
 * @returns pressure [Pa], right to 0.4 % over that range
 * @throws RangeError when the temperature is out of range
 *
 * Source: Magnus form, constants of Alduchov and Eskridge (from memory).
 */
export function saturationPressure(temperature: number): number {
  requireAll({ atLeast: 233, atMost: 333.2 }, { temperature });
  const celsius = temperature - CELSIUS;
  return 610.94 * Math.exp((17.625 * celsius) / (celsius + 243.04));
}

/**
 * Pressure of the dry part of the air.
 * @param air ambient air
 * @returns pressure [Pa]
 * @throws RangeError when a value is out of range, or there is more vapour than pressure
 *
 * Source: Dalton's law.
 */
export function dryAirPressure(air: AmbientAir): number {
  requireAll(positive, { pressure: air.pressure });
  requireAll(share, { humidity: air.humidity });
  const dry = air.pressure - air.humidity * saturationPressure(air.temperature);
  requireThat(dry > 0, "pressure", air.pressure, "more than the pressure of its water vapour");
  return dry;
}

/**
 * Density of moist air.
 * @param air ambient air
 * @returns density [kg/m3]
 * @throws RangeError when a value is out of range
 *
 * Source: ideal gases.
 */
export function moistAirDensity(air: AmbientAir): number {
  const dry = dryAirPressure(air);
  return (dry / DRY_AIR_CONSTANT + (air.pressure - dry) / VAPOUR_CONSTANT) / air.temperature;
}

/** The standard atmosphere's sea level, lapse rate and exponent (US Standard Atmosphere 1976, below 11 km). */
const SEA_LEVEL = { pressure: 101_325, temperature: 288.15, density: 1.225 };
const LAPSE_RATE = 0.0065;
const PRESSURE_EXPONENT = 5.2559;

/**
 * The standard atmosphere at an altitude.
 * @param altitude above sea level [m], -1000 to 11000
 * @returns pressure [Pa] and temperature [K]
 * @throws RangeError when the altitude is out of range
 *
 * Source: US Standard Atmosphere 1976, troposphere.
 */
export function standardAtmosphere(altitude: number): { pressure: number; temperature: number } {
  requireAll({ atLeast: -1000, atMost: 11_000 }, { altitude });
  const temperature = SEA_LEVEL.temperature - LAPSE_RATE * altitude;
  return {
    temperature,
    pressure: SEA_LEVEL.pressure * (temperature / SEA_LEVEL.temperature) ** PRESSURE_EXPONENT,
  };
}

/**
 * Density altitude: the altitude at which the standard atmosphere is as thin as this air.
 * @param density of the air [kg/m3], > 0
 * @returns altitude [m], negative for air denser than standard at sea level
 * @throws RangeError when the density is not above zero
 *
 * Source: US Standard Atmosphere 1976, troposphere.
 */
export function densityAltitude(density: number): number {
  requireAll(positive, { density });
  const share = (density / SEA_LEVEL.density) ** (1 / (PRESSURE_EXPONENT - 1));
  return (SEA_LEVEL.temperature / LAPSE_RATE) * (1 - share);
}
