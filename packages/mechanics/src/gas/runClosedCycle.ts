import { notNegative, requireAll } from "../check/requireAll.ts";
import type { ClosedCycle } from "./ClosedCycle.ts";
import { type PreparedCycle, prepareCycle } from "./prepareCycle.ts";
import { stepCycle } from "./stepCycle.ts";

/** The gas of one cylinder from inlet closing to exhaust opening. */
export interface ClosedCycleRun {
  /** crank angles of the nodes [rad], 0 at firing top dead centre: inlet closing, whole steps, exhaust opening */
  readonly angles: Float64Array;
  /** [m3] */
  readonly volumes: Float64Array;
  /** absolute [Pa] */
  readonly pressures: Float64Array;
  /** heat released [J], all of the fuel's but what is left unburnt */
  readonly released: number;
  /** heat lost to the walls [J] */
  readonly lost: number;
  /** work done on the piston [J] */
  readonly work: number;
  /** mass times gas constant of the charge [J/K]: temperature is pressure times volume over it */
  readonly massConstant: number;
}

/**
 * {@link runClosedCycle} of a cycle that is prepared already.
 * @param cycle the prepared cycle
 * @param heat of the fuel in the cylinder [J], >= 0
 * @returns pressures, work, heat released and heat lost
 * @throws never: unchecked, `prepareCycle` checks what it is given
 *
 * Source: as {@link runClosedCycle}.
 */
export function runPrepared(cycle: PreparedCycle, heat: number): ClosedCycleRun {
  const { angles, volumes, shares, ratios, massConstant } = cycle;
  const last = angles.length - 1;
  const pressures = new Float64Array(angles.length);
  pressures[0] = cycle.pressure;
  const lost = stepCycle(cycle, heat, pressures, 0, last);
  const released = heat * (shares[last]! - shares[0]!);
  const energyAt = (node: number) => (pressures[node]! * volumes[node]!) / ratios[node]!;
  return {
    angles,
    volumes,
    pressures,
    released,
    lost,
    work: energyAt(0) - energyAt(last) + released - lost,
    massConstant,
  };
}

/**
 * Pressure of the gas while the valves are closed: one zone of ideal gas whose heat capacity ratio moves from
 * that of the charge to that of burnt gas with the share burnt; heat by a Wiebe function; loss to the walls by
 * Woschni's correlation. First law over every step: change of p V / (g - 1) = heat in - heat lost - work.
 * @param cycle cylinder, charge, burning, walls, step
 * @param heat of the fuel in the cylinder [J], >= 0; 0 is a motored engine
 * @returns the course of pressure and volume, and the energies
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals, ch. 9 and 12. The step is of second
 * order but for the loss to the walls; at one degree the pressures are right to about 1e-4.
 */
export function runClosedCycle(cycle: ClosedCycle, heat: number): ClosedCycleRun {
  requireAll(notNegative, { heat });
  return runPrepared(prepareCycle(cycle), heat);
}
