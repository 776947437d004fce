import { positive, requireAll } from "../check/requireAll.ts";
import type { LoadCycle } from "../loads/crankpinLoadCycle.ts";

/** A plain bearing as a film sees it. */
export interface FilmBearing {
  /** dynamic viscosity of the oil in the film [Pa s], > 0 */
  readonly viscosity: number;
  /** of the crankshaft [rad/s], > 0 */
  readonly angularSpeed: number;
  /** [m], > 0 */
  readonly journalDiameter: number;
  /** effective length of the shell, or of each land beside a full groove [m], > 0 */
  readonly length: number;
  /** half the diametral clearance [m], > 0 */
  readonly radialClearance: number;
}

/** A plain bearing whose load changes with the crank angle. Axes stand still: x across, y along a cylinder. */
export interface CycleBearing extends FilmBearing {
  /** force on the journal, or on one land's share of it [N], at a crank angle [rad] */
  readonly load: (angle: number) => { readonly x: number; readonly y: number };
  /** mean of the angular speeds of journal and shell over the crankshaft's [-], + counter-clockwise */
  readonly meanTurning: (angle: number) => number;
}

/** The same, with load and turning in evenly spaced samples over two turns from crank angle 0, straight between them. */
export interface SampledBearing extends FilmBearing {
  readonly load: LoadCycle;
  /** as for a `CycleBearing`, one for each sample of the load; or one for the whole cycle */
  readonly meanTurning: Float64Array | number;
}

/** A working cycle of four strokes. */
export const CYCLE = 4 * Math.PI;
/** The journal starts centred one turn early and has forgotten it by then (test). */
export const RUN_IN = 2 * Math.PI;
/** Error of a step, as offset over clearance, and the widest step [rad]. */
export const PRECISION = { tolerance: 5e-5, widest: Math.PI / 20 } as const;
/** Offset over clearance by which a cycle's end may miss its start. */
const CLOSED = 2e-3;
const MOST_CYCLES = 6;

/** Speed of the journal by its mobility: offset over clearance, by crank angle, for each newton and unit of mobility. */
export const mobilityScale = (bearing: FilmBearing): number => {
  const { viscosity, angularSpeed, journalDiameter, length, radialClearance } = bearing;
  requireAll(positive, { viscosity, angularSpeed, journalDiameter, length, radialClearance });
  return (2 * radialClearance) ** 2 / (viscosity * length * journalDiameter ** 3 * angularSpeed);
};

/**
 * Whether the journal has come back to where its cycle began, or never will.
 * @param missX where the cycle ended less where it began, over the radial clearance [-]
 * @param missY likewise
 * @param cycles that were followed
 */
export const isClosed = (missX: number, missY: number, cycles: number): boolean =>
  Math.hypot(missX, missY) < CLOSED || cycles >= MOST_CYCLES;
