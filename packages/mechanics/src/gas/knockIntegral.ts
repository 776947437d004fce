import { positive, requireAll } from "../check/requireAll.ts";
import type { ClosedCycleRun } from "./runClosedCycle.ts";

/** Constants of Douaud and Eyzat: time [s], powers, and activation temperature [K]; pressure in atmospheres. */
const TIME = 17.68e-3;
const OCTANE_POWER = 3.402;
const PRESSURE_POWER = -1.7;
const ACTIVATION = 3800;
const ATMOSPHERE = 101_325;

/**
 * Time the unburnt gas takes to light of itself, 17.68 ms (ON/100)^3.402 p^-1.7 exp(3800 K / T), p in atmospheres.
 * @param input.octane octane number [-], > 0; fitted up to 100
 * @param input.pressure [Pa], > 0
 * @param input.temperature of the unburnt gas [K], > 0
 * @returns time [s]
 * @throws RangeError when a value is out of range
 *
 * Source: Douaud and Eyzat, as given in Heywood, Internal Combustion Engine Fundamentals, ch. 9.
 */
export function ignitionDelay(input: { octane: number; pressure: number; temperature: number }): number {
  const { octane, pressure, temperature } = input;
  requireAll(positive, { octane, pressure, temperature });
  return (
    TIME *
    (octane / 100) ** OCTANE_POWER *
    (pressure / ATMOSPHERE) ** PRESSURE_POWER *
    Math.exp(ACTIVATION / temperature)
  );
}

/**
 * Share of its ignition delay that the last unburnt gas has lived through when burning ends (Livengood and Wu):
 * the integral of dt over {@link ignitionDelay} from inlet closing. The unburnt gas is compressed adiabatically
 * by the pressure. At 1 the model would call knock; it compares two builds and predicts none.
 * @param input.run the closed cycle
 * @param input.chargeTemperature at inlet closing [K], > 0
 * @param input.heatCapacityRatio of the unburnt gas [-], > 1
 * @param input.octane octane number [-], > 0
 * @param input.angularSpeed crankshaft speed [rad/s], > 0
 * @param input.until crank angle at which burning ends [rad]
 * @returns integral [-]
 * @throws RangeError when a value is out of range
 *
 * Source: Livengood and Wu; Douaud and Eyzat; in Heywood, Internal Combustion Engine Fundamentals, ch. 9.
 */
export function knockIntegral(input: {
  run: ClosedCycleRun;
  chargeTemperature: number;
  heatCapacityRatio: number;
  octane: number;
  angularSpeed: number;
  until: number;
}): number {
  const { run, chargeTemperature, heatCapacityRatio, octane, angularSpeed, until } = input;
  requireAll(positive, { chargeTemperature, octane, angularSpeed });
  requireAll({ above: 1 }, { heatCapacityRatio });
  requireAll({}, { until });
  const { angles, pressures } = run;
  const exponent = (heatCapacityRatio - 1) / heatCapacityRatio;
  const rateAt = (node: number) => {
    const pressure = pressures[node]!;
    const temperature = chargeTemperature * (pressure / pressures[0]!) ** exponent;
    return 1 / ignitionDelay({ octane, pressure, temperature });
  };
  let sum = 0;
  let before = rateAt(0);
  for (let node = 1; node < angles.length && angles[node - 1]! < until; node++) {
    const here = rateAt(node);
    const [from, to] = [angles[node - 1]!, angles[node]!];
    const share = Math.min(1, (until - from) / (to - from));
    sum += share * (to - from) * (before + (share * (here - before)) / 2);
    before = here;
  }
  return sum / angularSpeed;
}
