import { finite, positive, requireAll, requireThat } from "../check/requireAll.ts";
import type { Cylinder } from "../volumes/cylinderVolumeAt.ts";
import type { Burning } from "./burntShare.ts";

/** Walls that take heat from the gas. Absent: none is lost. */
export interface Walls {
  /** mean temperature of head, crown and cylinder on the gas side [K], > 0 */
  readonly temperature: number;
  /** crankshaft speed [rad/s], > 0 */
  readonly angularSpeed: number;
}

/** What one cylinder holds and does between inlet closing and exhaust opening. */
export interface ClosedCycle {
  readonly cylinder: Cylinder;
  /** inlet closing, crank angle after nominal bottom dead centre [rad], 0 up to pi */
  readonly inletClosing: number;
  /** exhaust opening, crank angle before nominal bottom dead centre [rad], 0 up to pi */
  readonly exhaustOpening: number;
  /** the charge at inlet closing: absolute pressure [Pa] and temperature [K], both > 0 */
  readonly charge: { readonly pressure: number; readonly temperature: number };
  readonly burning: Burning;
  /** ratio of the heat capacities of the fresh charge [-], > 1; about 1.32 over the compression */
  readonly freshRatio: number;
  /** ratio of the heat capacities of the burnt gas [-], > 1; about 1.28 */
  readonly burntRatio: number;
  readonly walls?: Walls;
  /** crank-angle step [rad], > 0 and no more than 5 degrees; a whole number of steps must make two turns */
  readonly step: number;
}

/** One crank degree: the step of a cycle unless another is asked for. */
export const DEGREE = Math.PI / 180;
/** Coarsest step [degrees] at which the burning is still followed. */
const COARSEST = 5;

/**
 * Checks what {@link ClosedCycle} promises beyond what its cylinder and burning are checked for.
 * @param cycle the closed part of a cycle
 * @throws RangeError naming the value that is out of range
 *
 * Source: definition.
 */
export function requireClosedCycle(cycle: ClosedCycle): void {
  const { inletClosing, exhaustOpening, charge, burning, freshRatio, burntRatio, walls, step } = cycle;
  requireAll({ atLeast: 0, below: Math.PI }, { inletClosing, exhaustOpening });
  requireAll(positive, { pressure: charge.pressure, temperature: charge.temperature });
  requireAll({ above: 1 }, { freshRatio, burntRatio });
  if (walls !== undefined)
    requireAll(positive, { wallTemperature: walls.temperature, angularSpeed: walls.angularSpeed });
  requireAll({ above: 0, atMost: COARSEST * DEGREE * (1 + 1e-9) }, { step });
  const steps = (4 * Math.PI) / step;
  requireThat(
    Math.abs(steps - Math.round(steps)) < 1e-6,
    "step",
    step,
    "a step of which a whole number makes two turns",
  );
  const { start } = burning;
  requireAll(finite, { start });
  requireThat(
    start > inletClosing - Math.PI && start < Math.PI - exhaustOpening,
    "start",
    start,
    "burning to begin while the valves are closed",
  );
}
