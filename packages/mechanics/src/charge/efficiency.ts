import { notNegative, positive, requireAll, share } from "../check/requireAll.ts";
import { airDensity, type RunningEngine, sweptPerSecond } from "./meanEffectivePressure.ts";

/**
 * Share of the fuel's heat that becomes work, 1 / (b H).
 * @param input.specificFuelConsumption fuel per work [kg/J], > 0; brake specific gives the brake efficiency
 * @param input.heatingValue lower heating value of the fuel [J/kg], > 0
 * @returns efficiency [-]
 * @throws RangeError when a value is not above zero
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals, ch. 2.
 */
export function thermalEfficiency(input: { specificFuelConsumption: number; heatingValue: number }): number {
  const { specificFuelConsumption, heatingValue } = input;
  requireAll(positive, { specificFuelConsumption, heatingValue });
  return 1 / (specificFuelConsumption * heatingValue);
}

/**
 * Air taken in over the swept volume filled at a reference density.
 * @param input.airMassFlow [kg/s], >= 0
 * @param input.pressure of the reference, manifold or ambient [Pa], > 0
 * @param input.temperature of the reference [K], > 0
 * @param input the engine as in {@link RunningEngine}
 * @returns volumetric efficiency [-]
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals, ch. 2.
 */
export function volumetricEfficiency(
  input: RunningEngine & {
    readonly airMassFlow: number;
    readonly pressure: number;
    readonly temperature: number;
  },
): number {
  requireAll(notNegative, { airMassFlow: input.airMassFlow });
  return input.airMassFlow / (airDensity(input) * sweptPerSecond(input));
}

/**
 * Brake over indicated mean effective pressure or power.
 * @param input.brake [Pa] or [W], >= 0
 * @param input.indicated of the same kind, > 0
 * @returns efficiency [-], 0 to 1
 * @throws RangeError when a value is out of range, or the brake figure is the larger
 *
 * Source: definition.
 */
export function mechanicalEfficiency(input: { brake: number; indicated: number }): number {
  requireAll(notNegative, { brake: input.brake });
  requireAll(positive, { indicated: input.indicated });
  const efficiency = input.brake / input.indicated;
  requireAll(share, { efficiency });
  return efficiency;
}
