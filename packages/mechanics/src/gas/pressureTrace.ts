import { positive, requireAll } from "../check/requireAll.ts";
import { cylinderVolume } from "../volumes/cylinderVolumeAt.ts";
import type { ClosedCycle } from "./ClosedCycle.ts";
import { heatForPeak } from "./heatForPeakPressure.ts";
import { prepareCycle } from "./prepareCycle.ts";
import { type ClosedCycleRun, runPrepared } from "./runClosedCycle.ts";

/** A closed cycle and what the gas does while a valve is open. */
export interface WorkingCycle extends ClosedCycle {
  /** absolute pressure in the cylinder over the inlet stroke [Pa], > 0 */
  readonly inletPressure: number;
  /** absolute pressure in the cylinder over the exhaust stroke [Pa], > 0 */
  readonly exhaustPressure: number;
}

/** Pressure of one cylinder over a whole working cycle of two turns. */
export interface PressureTrace {
  /** crank angle between the samples [rad]; sample k stands at k times it, 0 at firing top dead centre */
  readonly step: number;
  /** absolute [Pa] */
  readonly pressures: Float64Array;
  /** while the valves are closed */
  readonly closed: ClosedCycleRun;
  /** heat of the fuel [J] */
  readonly heat: number;
}

/** Crank angle either side of gas-exchange top dead centre over which exhaust pressure gives way to inlet pressure. */
const CHANGEOVER = Math.PI / 12;

/** From `from` to `to` along half a cosine, as the share goes from 0 to 1. */
function eased(from: number, to: number, share: number): number {
  if (share <= 0) return from;
  return share >= 1 ? to : to + ((from - to) * (1 + Math.cos(Math.PI * share))) / 2;
}

function openPressure(cycle: WorkingCycle, angle: number, released: number): number {
  const { inletClosing, exhaustOpening, inletPressure, exhaustPressure, charge } = cycle;
  if (angle < Math.PI) return eased(released, exhaustPressure, 1 - (Math.PI - angle) / exhaustOpening);
  if (angle < 3 * Math.PI)
    return eased(exhaustPressure, inletPressure, (angle - 2 * Math.PI + CHANGEOVER) / (2 * CHANGEOVER));
  if (inletClosing === 0) return charge.pressure;
  return eased(inletPressure, charge.pressure, (angle - 3 * Math.PI) / inletClosing);
}

/**
 * Puts a closed cycle and the pressures of the open valves together; for the searches of this folder.
 * @param cycle the working cycle
 * @param closed what the closed part gave
 * @param heat of the fuel in the cylinder [J]
 * @returns absolute pressures over two turns, and what the closed part took in and gave
 * @throws RangeError when a pressure of the open valves is not above zero
 *
 * Source: as {@link pressureTraceForHeat}.
 */
export function traceOf(cycle: WorkingCycle, closed: ClosedCycleRun, heat: number): PressureTrace {
  const { step } = cycle;
  requireAll(positive, { inletPressure: cycle.inletPressure, exhaustPressure: cycle.exhaustPressure });
  const count = Math.round((4 * Math.PI) / step);
  const pressures = new Float64Array(count);
  const last = closed.angles.length - 1;
  const released = closed.pressures[last]!;
  const opens = closed.angles[last]!;
  const first = Math.round(closed.angles[1]! / step);
  // Nodes between the two ends stand on whole steps, those before top dead centre at the end of the cycle.
  for (let node = 1; node < last; node++)
    pressures[(first + node - 1 + count) % count] = closed.pressures[node]!;
  const closes = closed.angles[0]! + 4 * Math.PI;
  for (let k = Math.ceil(opens / step - 1e-9); k * step <= closes + 1e-9 * step; k++)
    pressures[k % count] = openPressure(cycle, k * step, released);
  return { step, pressures, closed, heat };
}

/**
 * Cylinder pressure over two turns for a given heat. While the valves are closed as {@link runClosedCycle};
 * from exhaust opening to bottom dead centre it falls along half a cosine to the exhaust pressure, which it
 * keeps over the exhaust stroke; within 15 degrees of gas-exchange top dead centre it passes to the inlet
 * pressure; from bottom dead centre to inlet closing along half a cosine to that of the charge.
 * @param cycle the working cycle
 * @param heat of the fuel in the cylinder [J], >= 0
 * @returns absolute pressures over two turns, and what the closed part took in and gave
 * @throws RangeError when a value is out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals, ch. 9, for the closed part; the rest is a
 * simplification of pressures that follow the pipes.
 */
export function pressureTraceForHeat(cycle: WorkingCycle, heat: number): PressureTrace {
  return traceOf(cycle, runPrepared(prepareCycle(cycle), heat), heat);
}

/**
 * Cylinder pressure over two turns with a given peak: the heat is found that gives it. See
 * {@link pressureTraceForHeat}.
 * @param cycle the working cycle
 * @param peakPressure greatest absolute pressure [Pa], above that of the motored charge
 * @returns absolute pressures over two turns, and what the closed part took in and gave
 * @throws RangeError when a value is out of range, or the charge reaches the pressure without burning
 *
 * Source: as {@link pressureTraceForHeat}; the heat by a search, numerical practice.
 */
export function pressureTraceForPeak(cycle: WorkingCycle, peakPressure: number): PressureTrace {
  const prepared = prepareCycle(cycle);
  const heat = heatForPeak(prepared, peakPressure);
  return traceOf(cycle, runPrepared(prepared, heat), heat);
}

/**
 * Pressure at any crank angle, straight between the samples.
 * @param trace the cycle
 * @param angle crank angle [rad], 0 at firing top dead centre; the cycle repeats every two turns
 * @returns absolute pressure [Pa]
 * @throws never: every angle has a place in the cycle
 *
 * Source: straight lines between samples, numerical practice.
 */
export function pressureAt({ step, pressures }: PressureTrace, angle: number): number {
  const count = pressures.length;
  const place = angle / step;
  const below = Math.floor(place);
  const index = below - count * Math.floor(below / count);
  const here = pressures[index]!;
  return here + (place - below) * (pressures[index + 1 === count ? 0 : index + 1]! - here);
}

/**
 * Work of the gas on the piston between two crank angles, by the trapezoid rule over the samples.
 * @param trace the cycle
 * @param cylinder the mechanism, its bore and its clearance volume
 * @param from first crank angle [rad], taken to the nearest sample
 * @param to last crank angle [rad], taken to the nearest sample
 * @returns work [J]; from -pi to pi it is the gross indicated work, from pi to 3 pi that of the gas exchange
 * @throws RangeError when the mechanism cannot turn or a size is out of range
 *
 * Source: definition of the work of a gas; trapezoid rule.
 */
export function indicatedWork(
  trace: PressureTrace,
  cylinder: Parameters<typeof cylinderVolume>[0],
  from: number,
  to: number,
): number {
  const { step, pressures } = trace;
  const count = pressures.length;
  const volumeAt = cylinderVolume(cylinder);
  const first = Math.round(from / step);
  const last = Math.round(to / step);
  let index = ((first % count) + count) % count;
  let pressure = pressures[index]!;
  let volume = volumeAt(first * step);
  let work = 0;
  for (let k = first + 1; k <= last; k++) {
    index = index + 1 === count ? 0 : index + 1;
    const nextPressure = pressures[index]!;
    const nextVolume = volumeAt(k * step);
    work += ((pressure + nextPressure) / 2) * (nextVolume - volume);
    pressure = nextPressure;
    volume = nextVolume;
  }
  return work;
}
