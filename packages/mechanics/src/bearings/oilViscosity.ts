import { positive, requireAll, requireThat } from "../check/requireAll.ts";

/** Ice point [K]. */
const ICE = 273.15;
/** Vogel's third constant for engine oils [degrees Celsius] (common practice). */
const VOGEL = 95;

/** A viscosity at a temperature. */
export interface ViscosityPoint {
  /** [K], > 0 */
  readonly temperature: number;
  /** [Pa s] or [m2/s], > 0 */
  readonly viscosity: number;
}

function requirePoints(temperature: number, first: ViscosityPoint, second: ViscosityPoint): void {
  requireAll(positive, { temperature });
  for (const point of [first, second])
    requireAll(positive, { temperature: point.temperature, viscosity: point.viscosity });
  requireThat(
    first.temperature !== second.temperature,
    "temperature",
    second.temperature,
    "two points at different temperatures",
  );
}

/**
 * Viscosity of an oil by Vogel's equation, mu = A exp(B/(T + 95)) with T in degrees Celsius, through two points.
 * With the value at 100 degrees Celsius and the high-shear value at 150 it mixes little and much shear: a lower
 * bound in the film.
 * @param input.temperature [K], above 178.15
 * @param input.first one point
 * @param input.second another, at another temperature
 * @returns viscosity, in the unit of the points
 * @throws RangeError when a value is out of range
 *
 * Source: H. Vogel's equation; the constant 95 is common practice for engine oils.
 */
export function vogelViscosity(input: {
  temperature: number;
  first: ViscosityPoint;
  second: ViscosityPoint;
}): number {
  const { temperature, first, second } = input;
  requirePoints(temperature, first, second);
  requireAll(
    { above: ICE - VOGEL },
    { temperature, "first.temperature": first.temperature, "second.temperature": second.temperature },
  );
  const place = (kelvin: number) => 1 / (kelvin - ICE + VOGEL);
  const share =
    (place(temperature) - place(first.temperature)) / (place(second.temperature) - place(first.temperature));
  return first.viscosity * (second.viscosity / first.viscosity) ** share;
}

/** One square millimetre per second [m2/s]: the unit of Walther's equation. */
const CENTISTOKES = 1e-6;
/** Added to the viscosity in it, from 2 mm2/s up. */
const WALTHER = 0.7;

/**
 * Kinematic viscosity of an oil by Walther's equation, log log(nu + 0.7) = A - B log T, through two points, as on an
 * oil's sheet at 40 and 100 degrees Celsius. Little shear: an upper bound in the film of a multigrade oil.
 * @param input.temperature [K], > 0
 * @param input.first one point [m2/s], above 0.3 mm2/s; good from 2
 * @param input.second another, at another temperature
 * @returns kinematic viscosity [m2/s]
 * @throws RangeError when a value is out of range
 *
 * Source: ASTM D341.
 */
export function waltherViscosity(input: {
  temperature: number;
  first: ViscosityPoint;
  second: ViscosityPoint;
}): number {
  const { temperature, first, second } = input;
  requirePoints(temperature, first, second);
  for (const { viscosity } of [first, second])
    requireAll({ above: (1 - WALTHER) * CENTISTOKES }, { viscosity });
  const place = ({ viscosity }: ViscosityPoint) => Math.log10(Math.log10(viscosity / CENTISTOKES + WALTHER));
  const slope = (place(second) - place(first)) / Math.log10(second.temperature / first.temperature);
  const found = place(first) + slope * Math.log10(temperature / first.temperature);
  return (10 ** (10 ** found) - WALTHER) * CENTISTOKES;
}

/** Temperature at which oils' sheets give the density [K]. */
const SHEET = ICE + 15;
/** Loss of density of an oil for each kelvin, over its density at 15 degrees Celsius [1/K] (from memory). */
const EXPANSION = 7.5e-4;

/**
 * Density of an oil when hot, rho_15 (1 - 0.00075 (T - 288.15 K)).
 * @param input.densityAt15 at 15 degrees Celsius, as on the sheet [kg/m3], > 0
 * @param input.temperature [K], > 0 and below 1600
 * @returns density [kg/m3]
 * @throws RangeError when a value is out of range
 *
 * Source: expansion of mineral oils, from memory.
 */
export function oilDensity(input: { densityAt15: number; temperature: number }): number {
  const { densityAt15, temperature } = input;
  requireAll(positive, { densityAt15 });
  requireAll({ above: 0, below: SHEET + 1 / EXPANSION }, { temperature });
  return densityAt15 * (1 - EXPANSION * (temperature - SHEET));
}
