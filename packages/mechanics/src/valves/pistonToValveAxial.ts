import { finite, requireAll } from "../check/requireAll.ts";
import { pistonTravelOver } from "../kinematics/pistonTravel.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { leastOnInterval } from "../outline/leastOnInterval.ts";
import type { LiftCurve } from "./LiftCurve.ts";
import { tiltRange } from "./shutValveDistance.ts";

/** One valve over the piston it could meet. */
export interface ValveOverPiston {
  readonly crank: SliderCrank;
  /** lift of the valve, timed from overlap top dead centre */
  readonly curve: LiftCurve;
  /** shut valve to pocket floor along the valve's axis at top dead centre c_0 [m], either sign */
  readonly shutValveDistance: number;
  /** valve axis against the cylinder axis [rad], within a quarter turn */
  readonly valveTilt: number;
}

/** Crank angle either side of overlap top dead centre in which piston and valve can be close [rad]. */
export const overlapWindow = Math.PI / 3;
/** Half a degree of crank. */
const steps = 240;

/**
 * Checks a valve and its piston.
 * @param valve the valve and the piston
 * @throws RangeError naming the number that is out of range
 *
 * Source: definition.
 */
export function requireValveOverPiston({ shutValveDistance, valveTilt }: ValveOverPiston): void {
  requireAll(finite, { shutValveDistance });
  requireAll(tiltRange, { valveTilt });
}

/**
 * Piston to valve along the valve's axis at one crank angle: c_0 + s cos(alpha) - L.
 * @param valve the valve and the piston
 * @param angle crank angle from overlap top dead centre [rad]
 * @returns clearance [m], - when they meet
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function pistonToValveAxialAt(valve: ValveOverPiston, angle: number): number {
  requireAll(finite, { angle });
  return pistonToValveAxialOver(valve)(angle);
}

/**
 * Piston to valve along the valve's axis over the crank angle, checked once: for sweeps.
 * @param valve the valve and the piston
 * @returns crank angle from overlap top dead centre [rad] → clearance [m], - when they meet
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function pistonToValveAxialOver(valve: ValveOverPiston): (angle: number) => number {
  requireValveOverPiston(valve);
  const travel = pistonTravelOver(valve.crank);
  const cosine = Math.cos(valve.valveTilt);
  return (angle) => valve.shutValveDistance + travel(angle) * cosine - valve.curve.at(angle).lift;
}

/**
 * Least value over a window of the overlap, refined between half-degree steps.
 * @param value of the crank angle [rad]
 * @returns the least value and the crank angle [rad]
 * @throws never itself; what `value` throws comes through
 *
 * Source: as `leastOnInterval`: a grid, then golden sections.
 */
export function leastOverOverlap(value: (angle: number) => number): { at: number; value: number } {
  return leastOnInterval(value, -overlapWindow, overlapWindow, steps);
}

/**
 * Least piston to valve clearance along the valve's axis within 60 degrees of overlap top dead centre. Exact
 * where the pocket's floor is parallel to the valve's face. Rods stretch and bearings give at speed: the
 * running clearance is smaller. With the stand-in curve it is a first look, not a measurement.
 * @param valve the valve and the piston
 * @returns clearance [m], - when they meet, and the crank angle [rad] from overlap top dead centre, + after
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function pistonToValveAxial(valve: ValveOverPiston): { clearance: number; angle: number } {
  const least = leastOverOverlap(pistonToValveAxialOver(valve));
  return { clearance: least.value, angle: least.at };
}
