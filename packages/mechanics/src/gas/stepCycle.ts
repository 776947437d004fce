import type { PreparedCycle } from "./prepareCycle.ts";
import { lossByPressure, lossBySpeed } from "./wallLoss.ts";

/**
 * Carries the pressure over some steps of a closed cycle. Each step is adiabatic over its first half, takes up
 * and gives off heat at its middle volume, and is adiabatic over its second half, so that the energy of every
 * step balances exactly.
 * @param cycle what does not depend on the heat
 * @param heat of the fuel [J]
 * @param pressures by node [Pa]; that of node `from` must be there, those after it up to `to` are written
 * @returns heat lost to the walls over these steps [J]
 */
export function stepCycle(
  cycle: PreparedCycle,
  heat: number,
  pressures: Float64Array,
  from: number,
  to: number,
): number {
  const { middleVolumes, shares, ratios, firstHalf, secondHalf, motored, wallFactors } = cycle;
  const { massConstant, wallTemperature, motoredSpeed, burningSpeed } = cycle;
  const motoredLoss = lossBySpeed(motoredSpeed);
  let lost = 0;
  let pressure = pressures[from]!;
  for (let i = from; i < to; i++) {
    const volume = middleVolumes[i]!;
    const ratio = ratios[i + 1]!;
    const gain = heat * (shares[i + 1]! - shares[i]!);
    let energy = (pressure * firstHalf[i]! * volume) / ratios[i]!;
    if (wallTemperature !== undefined) {
      // The loss is taken where half of the step's heat is there, for the state is then that of its middle.
      const held = ((energy + gain / 2) * ratio) / volume;
      const temperature = (held * volume) / massConstant;
      const above = held - motored[i]!;
      const bySpeed = above > 0 ? lossBySpeed(motoredSpeed + burningSpeed * above) : motoredLoss;
      const loss = wallFactors[i]! * lossByPressure(held) * bySpeed * (temperature - wallTemperature);
      lost += loss;
      energy -= loss;
    }
    pressure = (((energy + gain) * ratio) / volume) * secondHalf[i]!;
    pressures[i + 1] = pressure;
  }
  return lost;
}
