import { notNegative, positive, requireAll } from "../check/requireAll.ts";

/** Gas speed from piston motion while the valves are closed, over mean piston speed [-]. */
const PISTON_SPEED_FACTOR = 2.28;
/** Gas speed that burning adds, for each kelvin of the reference temperature [m/(s K)]. */
const BURNING_FACTOR = 3.24e-3;

/**
 * Mean gas speed for {@link wallHeatTransfer} while the valves are closed, without swirl:
 * 2.28 S_p + 0.00324 (V_d T_r / (p_r V_r)) (p - p_mot).
 * @param input.meanPistonSpeed [m/s], >= 0
 * @param input.sweptVolume of one cylinder [m3], > 0
 * @param input.reference the charge at inlet closing: pressure [Pa], volume [m3] and temperature [K], all > 0
 * @param input.pressure of the gas [Pa], > 0
 * @param input.motoredPressure it would have at this volume without burning [Pa], > 0
 * @returns speed [m/s]
 * @throws RangeError when a value is out of range
 *
 * Source: Woschni's correlation as given in Heywood, Internal Combustion Engine Fundamentals, ch. 12.
 */
export function wallGasSpeed(input: {
  meanPistonSpeed: number;
  sweptVolume: number;
  reference: { pressure: number; volume: number; temperature: number };
  pressure: number;
  motoredPressure: number;
}): number {
  const { meanPistonSpeed, sweptVolume, pressure, motoredPressure } = input;
  const reference = input.reference;
  requireAll(notNegative, { meanPistonSpeed });
  requireAll(positive, { sweptVolume, pressure, motoredPressure });
  requireAll(positive, { ...reference });
  const burning = burningSpeedFactor({ sweptVolume, reference }) * Math.max(0, pressure - motoredPressure);
  return PISTON_SPEED_FACTOR * meanPistonSpeed + burning;
}

/**
 * Gas speed for each pascal above the motored pressure, 0.00324 V_d T_r / (p_r V_r); for inner loops.
 * @param input.sweptVolume of one cylinder [m3], > 0
 * @param input.reference the charge at inlet closing: pressure [Pa], volume [m3] and temperature [K], all > 0
 * @returns factor [m/(s Pa)]
 * @throws never: unchecked, wallGasSpeed checks what it is given
 *
 * Source: Woschni's correlation as given in Heywood, Internal Combustion Engine Fundamentals, ch. 12.
 */
export function burningSpeedFactor(input: {
  sweptVolume: number;
  reference: { pressure: number; volume: number; temperature: number };
}): number {
  const { pressure, volume, temperature } = input.reference;
  return (BURNING_FACTOR * input.sweptVolume * temperature) / (pressure * volume);
}

/**
 * Gas speed by piston motion alone, 2.28 S_p; for inner loops.
 * @param meanPistonSpeed [m/s], >= 0
 * @returns speed [m/s]
 * @throws never: unchecked, wallGasSpeed checks what it is given
 *
 * Source: Woschni's correlation as given in Heywood, Internal Combustion Engine Fundamentals, ch. 12.
 */
export const motoredGasSpeed = (meanPistonSpeed: number): number => PISTON_SPEED_FACTOR * meanPistonSpeed;

/**
 * Heat transfer coefficient between gas and walls, h = 3.26 B^-0.2 p^0.8 T^-0.55 w^0.8 with p in kPa.
 * @param input.bore [m], > 0
 * @param input.pressure of the gas [Pa], > 0
 * @param input.temperature mean of the gas [K], > 0
 * @param input.gasSpeed as {@link wallGasSpeed} gives it [m/s], >= 0
 * @returns coefficient [W/(m2 K)]; engines differ from it by a third either way
 * @throws RangeError when a value is out of range
 *
 * Source: Woschni's correlation as given in Heywood, Internal Combustion Engine Fundamentals, ch. 12.
 */
export function wallHeatTransfer(input: {
  bore: number;
  pressure: number;
  temperature: number;
  gasSpeed: number;
}): number {
  const { bore, pressure, temperature, gasSpeed } = input;
  requireAll(positive, { bore, pressure, temperature });
  requireAll(notNegative, { gasSpeed });
  return boreFactor(bore) * stateFactor(pressure, temperature, gasSpeed);
}

/**
 * The part of {@link wallHeatTransfer} that stays the same over a cycle, 3.26 B^-0.2 in its units.
 * @param bore [m], > 0
 * @returns factor, to be multiplied by that of the gas
 * @throws never: unchecked, wallHeatTransfer checks what it is given
 *
 * Source: Woschni's correlation as given in Heywood, Internal Combustion Engine Fundamentals, ch. 12.
 */
export const boreFactor = (bore: number): number => 3.26 * bore ** -0.2;

/**
 * The part of {@link wallHeatTransfer} that follows the gas, p^0.8 T^-0.55 w^0.8; for inner loops.
 * @param pressure of the gas [Pa], > 0
 * @param temperature mean of the gas [K], > 0
 * @param gasSpeed [m/s], >= 0
 * @returns factor, to be multiplied by that of the bore
 * @throws never: unchecked, wallHeatTransfer checks what it is given
 *
 * Source: Woschni's correlation as given in Heywood, Internal Combustion Engine Fundamentals, ch. 12.
 */
export const stateFactor = (pressure: number, temperature: number, gasSpeed: number): number =>
  Math.exp(0.8 * Math.log((pressure / 1000) * gasSpeed) - 0.55 * Math.log(temperature));
