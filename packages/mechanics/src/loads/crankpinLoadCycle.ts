import { arraysOf } from "../check/arraysOf.ts";
import { crankForcesBy } from "./crankForces.ts";
import type { RunningCylinder } from "./RunningCylinder.ts";

/** A load in the plane over a cycle of two turns, in evenly spaced samples from crank angle 0. */
export interface LoadCycle {
  /** parts of the load [N] */
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** The load of one rod on its crankpin, and how the rod swings. */
export interface CrankpinLoadCycle extends LoadCycle {
  /** angular speed of the rod over that of the crankshaft [-], + counter-clockwise */
  readonly swing: Float64Array;
}

/** Samples of a cycle: two degrees of crank, within which forces change little. */
export const CYCLE_SAMPLES = 360;
const CYCLE = 4 * Math.PI;
/** Crank angles of the samples [rad], their sines and cosines: the same for every cycle. */
const ANGLES = Float64Array.from({ length: CYCLE_SAMPLES }, (_, i) => (i * CYCLE) / CYCLE_SAMPLES);
const SINES = ANGLES.map((angle) => Math.sin(angle));
const COSINES = ANGLES.map((angle) => Math.cos(angle));

/**
 * Load of one rod on its crankpin over a whole cycle: `crankForces`, sampled.
 * @param cylinder what runs and how fast; crank angle 0 is firing top dead centre
 * @returns parts across and along the cylinder [N], the frame that of `crankpinLoad`
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function crankpinLoadCycle(cylinder: RunningCylinder): CrankpinLoadCycle {
  const { pressureAt } = cylinder;
  const forces = crankForcesBy(cylinder);
  const [x, y, swing] = arraysOf(3, CYCLE_SAMPLES) as [Float64Array, Float64Array, Float64Array];
  for (let i = 0; i < CYCLE_SAMPLES; i++) {
    const { crankpin, swing: swinging } = forces(pressureAt(ANGLES[i]!), SINES[i]!, COSINES[i]!);
    x[i] = crankpin.x;
    y[i] = crankpin.y;
    swing[i] = swinging;
  }
  return { x, y, swing };
}

/**
 * Value between the samples of a cycle, along a straight line.
 * @param samples evenly spaced from crank angle 0 over two turns
 * @param angle crank angle [rad], any
 * @returns value in the unit of the samples
 * @throws never: every angle has a place in the cycle
 *
 * Source: straight lines between samples, numerical practice.
 */
export function cycleValue(samples: Float64Array, angle: number): number {
  const count = samples.length;
  const place = (angle / CYCLE) * count;
  const below = Math.floor(place);
  const index = ((below % count) + count) % count;
  const here = samples[index]!;
  return here + (place - below) * (samples[index + 1 === count ? 0 : index + 1]! - here);
}

/**
 * Mean and greatest size of a load over its cycle.
 * @param load its samples
 * @returns [N]
 * @throws never: a cycle has samples
 *
 * Source: definition.
 */
export function sizeOverCycle({ x, y }: LoadCycle): { mean: number; greatest: number } {
  let [sum, greatest] = [0, 0];
  for (let i = 0; i < x.length; i++) {
    // Loads are far from where squares overflow, and hypot is slow.
    const size = Math.sqrt(x[i]! * x[i]! + y[i]! * y[i]!);
    sum += size;
    if (size > greatest) greatest = size;
  }
  return { mean: sum / x.length, greatest };
}
