/** The pressure of the correlation is in kPa. */
const KILO = 1000;

/**
 * What the loss to the walls takes of the volume: with the temperature p V / (m R), p^0.8 T^-0.55 w^0.8 of
 * `stateFactor` is p^0.25 w^0.8 (V / (m R))^-0.55. The three parts apart are quicker: the volume's is the same whatever
 * the heat, the speed's the same while nothing burns, and the pressure's two roots.
 * @param volume of the gas [m3], > 0
 * @param massConstant mass times gas constant [J/K], > 0
 *
 * Source: as `stateFactor` of wallHeatTransfer.
 */
export const lossByVolume = (volume: number, massConstant: number): number =>
  lossByLogOfVolume(Math.log(volume / massConstant));

const LOG_OF_KILO = Math.log(KILO);

/**
 * {@link lossByVolume}, by what is known of a prepared cycle.
 * @param log natural logarithm of volume [m3] over mass times gas constant [J/K]
 *
 * Source: as `stateFactor` of wallHeatTransfer.
 */
export const lossByLogOfVolume = (log: number): number => Math.exp(-0.55 * log - 0.8 * LOG_OF_KILO);

/**
 * The part of the gas speed, see {@link lossByVolume}.
 * @param speed [m/s], >= 0
 *
 * Source: as `stateFactor` of wallHeatTransfer.
 */
export const lossBySpeed = (speed: number): number => Math.exp(0.8 * Math.log(speed));

/**
 * The part of the pressure, see {@link lossByVolume}.
 * @param pressure absolute [Pa], >= 0
 *
 * Source: as `stateFactor` of wallHeatTransfer.
 */
export const lossByPressure = (pressure: number): number => Math.sqrt(Math.sqrt(pressure));
